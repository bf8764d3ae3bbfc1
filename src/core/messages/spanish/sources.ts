import type { TranslationOf } from '../model/translation.ts';
import type { sources as english } from '../english/sources.ts';

/** Citations to print, by the key of the source. */
export const sources: TranslationOf<typeof english> = {
  'sources.oc-451-1': 'Shulján Aruj, Oraj Jaim 451:1',
  'sources.oc-451-3': 'Shulján Aruj, Oraj Jaim 451:3',
  'sources.oc-451-4': 'Shulján Aruj, Oraj Jaim 451:4',
  'sources.oc-451-4-gloss': 'Rema sobre Shulján Aruj, Oraj Jaim 451:4',
  'sources.mb-451-34': 'Mishná Berurá 451:34',
  'sources.oc-451-5': 'Shulján Aruj, Oraj Jaim 451:5',
  'sources.oc-451-5-gloss': 'Rema sobre Shulján Aruj, Oraj Jaim 451:5',
  'sources.oc-451-6': 'Shulján Aruj, Oraj Jaim 451:6',
  'sources.oc-451-6-gloss': 'Rema sobre Shulján Aruj, Oraj Jaim 451:6',
  'sources.oc-451-8': 'Shulján Aruj, Oraj Jaim 451:8',
  'sources.oc-451-12-gloss': 'Rema sobre Shulján Aruj, Oraj Jaim 451:12',
  'sources.oc-451-14': 'Shulján Aruj, Oraj Jaim 451:14',
  'sources.oc-451-15': 'Shulján Aruj, Oraj Jaim 451:15; Mishná Berurá 451:65',
  'sources.oc-451-17-gloss': 'Rema sobre Shulján Aruj, Oraj Jaim 451:17',
  'sources.oc-451-18-gloss': 'Rema sobre Shulján Aruj, Oraj Jaim 451:18',
  'sources.oc-451-20': 'Shulján Aruj, Oraj Jaim 451:20',
  'sources.oc-451-22': 'Shulján Aruj, Oraj Jaim 451:22',
  'sources.oc-451-22-gloss': 'Rema sobre Shulján Aruj, Oraj Jaim 451:22',
  'sources.oc-451-23': 'Shulján Aruj, Oraj Jaim 451:23',
  'sources.oc-451-24': 'Shulján Aruj, Oraj Jaim 451:24',
  'sources.oc-451-26': 'Shulján Aruj, Oraj Jaim 451:26',
  'sources.oc-451-26-gloss': 'Rema sobre Shulján Aruj, Oraj Jaim 451:26',
  'sources.oc-452-1': 'Shulján Aruj, Oraj Jaim 452:1; Rema ahí; 443:1',
  'sources.oc-452-2': 'Rema sobre Shulján Aruj, Oraj Jaim 452:2; Rema sobre Yoré Deá 121:2',
  'sources.oc-452-6': 'Shulján Aruj, Oraj Jaim 452:6',
  'sources.mb-452-31': 'Mishná Berurá 452:29-31',
  'sources.oc-452-7': 'Shulján Aruj, Oraj Jaim 452:7',
  'sources.oc-461-1': 'Shulján Aruj, Oraj Jaim 461:1',
  'sources.oc-509-5': 'Shulján Aruj, Oraj Jaim 509:5; Maguén Abraham 509:11',
  'sources.ma-509-11': 'Maguén Abraham 509:11',
  'sources.oc-452-4': 'Shulján Aruj, Oraj Jaim 452:4',
  'sources.oc-452-5': 'Shulján Aruj, Oraj Jaim 452:5; Rema ahí',
  'sources.yd-120-1': 'Shulján Aruj, Yoré Deá 120:1',
  'sources.yd-121-4': 'Shulján Aruj, Yoré Deá 121:4-5',
  'sources.rest-before-fire':
    'Deducido de Siftei Kohen sobre Yoré Deá 121:17: el fuego consume lo absorbido',
  'sources.crack-as-pit': 'Deducido de Shulján Aruj, Oraj Jaim 451:3 y de Rema sobre 451:5',
  'sources.fine-mesh':
    'Deducido de Rema sobre Oraj Jaim 451:18: lo que tiene malla fina se juzga como un colador',
  'sources.clean-water-hose':
    'Deducido: por dentro solo corrió agua limpia, y por fuera es como un mango (Rema sobre Oraj Jaim 451:12)',
  'sources.oven-highest-heat':
    'Ningún código nombra la posición máxima de un horno; las autoridades posteriores difieren',
  'sources.self-clean-cycle':
    'Ningún código nombra un ciclo de autolimpieza; autoridades posteriores',
  'sources.glass-zones':
    'Ningún código nombra un vidrio sobre un calentador; las autoridades posteriores difieren',
  'sources.microwave-steam':
    'Ningún código nombra un microondas; las autoridades posteriores difieren',
  'sources.pour-three-times':
    'Autoridades posteriores; el código mismo no kasheriza el barro vidriado',
  'sources.later-authorities': 'No nombrado en los códigos; las autoridades posteriores difieren',
  'sources.trade-practice': 'práctica común, sin fuente publicada',
  'sources.burn-first-aid':
    'ANZCOR Guideline 9.1.3, First Aid for Burns; D. A. Zideman y otros: European Resuscitation Council Guidelines 2021: First aid, Resuscitation 161 (2021) 270-290',
  'sources.makers-manuals': 'Manuales de usuario de cocinas, hornos, hervidores y placas',
  'sources.moritz-henriques-1947':
    'A. R. Moritz, F. C. Henriques: Studies of thermal injury II, American Journal of Pathology 23 (1947) 695-720',
  'sources.callister-thermal-shock':
    'W. D. Callister: Materials Science and Engineering, choque térmico de materiales frágiles',
  'sources.gas-air':
    'Emisiones de quemadores de gas: E. D. Lebel y otros, Environmental Science & Technology 56 (2022); límites de 1 h de la EPA de EE. UU. y de la OMS',
  'sources.ptfe-fumes': 'N. Caekebeke y otros, Vlaams Diergeneeskundig Tijdschrift 85 (2016) 3-8',
  'sources.iso-13732-1-touch':
    'ISO 13732-1, Ergonomía del ambiente térmico: contacto con superficies calientes',
  'sources.repair-practice': 'práctica común, sin fuente publicada',
  'sources.cleaner-labels': 'Advertencias en las etiquetas de limpiadores domésticos',
  'sources.circuit-load':
    'Suma de corrientes frente a la corriente nominal del circuito (NEC 210.23, IEC 60364)',
  'sources.heat-index': 'Servicio Meteorológico Nacional de EE. UU., índice de calor y sus rangos',
  'sources.ansi-z535-4': 'ANSI Z535.4, señales y etiquetas de seguridad de productos',
};
