import type { sources as english } from '../english/sources.ts';
import type { TranslationOf } from '../model/translation.ts';

/** Citations to print, by the key of the source. */
export const sources: TranslationOf<typeof english> = {
  'sources.oc-451-1': 'Choulhan Aroukh, Orah Haïm 451:1',
  'sources.oc-451-3': 'Choulhan Aroukh, Orah Haïm 451:3',
  'sources.oc-451-4': 'Choulhan Aroukh, Orah Haïm 451:4',
  'sources.oc-451-4-gloss': 'Rama sur Choulhan Aroukh, Orah Haïm 451:4',
  'sources.mb-451-34': 'Michna Beroura 451:34',
  'sources.oc-451-5': 'Choulhan Aroukh, Orah Haïm 451:5',
  'sources.oc-451-5-gloss': 'Rama sur Choulhan Aroukh, Orah Haïm 451:5',
  'sources.oc-451-6': 'Choulhan Aroukh, Orah Haïm 451:6',
  'sources.oc-451-6-gloss': 'Rama sur Choulhan Aroukh, Orah Haïm 451:6',
  'sources.oc-451-8': 'Choulhan Aroukh, Orah Haïm 451:8',
  'sources.oc-451-12-gloss': 'Rama sur Choulhan Aroukh, Orah Haïm 451:12',
  'sources.oc-451-14': 'Choulhan Aroukh, Orah Haïm 451:14',
  'sources.oc-451-15': 'Choulhan Aroukh, Orah Haïm 451:15 ; Michna Beroura 451:65',
  'sources.oc-451-17-gloss': 'Rama sur Choulhan Aroukh, Orah Haïm 451:17',
  'sources.oc-451-18-gloss': 'Rama sur Choulhan Aroukh, Orah Haïm 451:18',
  'sources.oc-451-20': 'Choulhan Aroukh, Orah Haïm 451:20',
  'sources.oc-451-22': 'Choulhan Aroukh, Orah Haïm 451:22',
  'sources.oc-451-22-gloss': 'Rama sur Choulhan Aroukh, Orah Haïm 451:22',
  'sources.oc-451-23': 'Choulhan Aroukh, Orah Haïm 451:23',
  'sources.oc-451-24': 'Choulhan Aroukh, Orah Haïm 451:24',
  'sources.oc-451-26': 'Choulhan Aroukh, Orah Haïm 451:26',
  'sources.oc-451-26-gloss': 'Rama sur Choulhan Aroukh, Orah Haïm 451:26',
  'sources.oc-452-1': 'Choulhan Aroukh, Orah Haïm 452:1 ; Rama au même endroit ; 443:1',
  'sources.oc-452-2': 'Rama sur Choulhan Aroukh, Orah Haïm 452:2 ; Rama sur Yoré Déa 121:2',
  'sources.oc-452-6': 'Choulhan Aroukh, Orah Haïm 452:6',
  'sources.mb-452-31': 'Michna Beroura 452:29-31',
  'sources.oc-452-7': 'Choulhan Aroukh, Orah Haïm 452:7',
  'sources.oc-461-1': 'Choulhan Aroukh, Orah Haïm 461:1',
  'sources.oc-509-5': 'Choulhan Aroukh, Orah Haïm 509:5 ; Maguen Avraham 509:11',
  'sources.ma-509-11': 'Maguen Avraham 509:11',
  'sources.oc-452-4': 'Choulhan Aroukh, Orah Haïm 452:4',
  'sources.oc-452-5': 'Choulhan Aroukh, Orah Haïm 452:5 ; Rama au même endroit',
  'sources.yd-120-1': 'Choulhan Aroukh, Yoré Déa 120:1',
  'sources.yd-121-4': 'Choulhan Aroukh, Yoré Déa 121:4-5',
  'sources.rest-before-fire':
    'Déduit du Sifté Cohen sur Yoré Déa 121:17 : le feu consume ce qui a été absorbé',
  'sources.crack-as-pit': 'Déduit du Choulhan Aroukh, Orah Haïm 451:3 et du Rama sur 451:5',
  'sources.fine-mesh':
    'Déduit du Rama sur Orah Haïm 451:18 : ce qui a une maille fine est jugé comme un tamis',
  'sources.clean-water-hose':
    'Déduit : seule de l’eau propre y coulait, et dehors il est comme un manche (Rama sur Orah Haïm 451:12)',
  'sources.oven-highest-heat':
    'Aucun code ne nomme le réglage maximal d’un four ; les décisionnaires ultérieurs diffèrent',
  'sources.self-clean-cycle':
    'Aucun code ne nomme un cycle de pyrolyse ; décisionnaires ultérieurs',
  'sources.glass-zones':
    'Aucun code ne nomme un verre au-dessus d’une chauffe ; les décisionnaires ultérieurs diffèrent',
  'sources.microwave-steam':
    'Aucun code ne nomme un micro-ondes ; les décisionnaires ultérieurs diffèrent',
  'sources.pour-three-times':
    'Décisionnaires ultérieurs ; le code lui-même ne cachérise pas l’argile émaillée',
  'sources.later-authorities': 'Non nommé dans les codes ; les décisionnaires ultérieurs diffèrent',
  'sources.trade-practice': 'pratique courante, sans source publiée',
  'sources.burn-first-aid':
    'ANZCOR Guideline 9.1.3, First Aid for Burns ; D. A. Zideman et autres, European Resuscitation Council Guidelines 2021: First aid, Resuscitation 161 (2021) 270-290',
  'sources.makers-manuals': 'Notices des fabricants de cuisinières, fours, bouilloires et plaques',
  'sources.moritz-henriques-1947':
    'A. R. Moritz, F. C. Henriques, Studies of thermal injury II, American Journal of Pathology 23 (1947) 695-720',
  'sources.callister-thermal-shock':
    'W. D. Callister, Materials Science and Engineering, choc thermique des matériaux fragiles',
  'sources.gas-air':
    'Émissions des brûleurs à gaz : E. D. Lebel et autres, Environmental Science & Technology 56 (2022) ; limites sur 1 h de l’US EPA et de l’OMS',
  'sources.ptfe-fumes': 'N. Caekebeke et autres, Vlaams Diergeneeskundig Tijdschrift 85 (2016) 3-8',
  'sources.iso-13732-1-touch':
    'ISO 13732-1, Ergonomie des ambiances thermiques, contact avec des surfaces chaudes',
  'sources.repair-practice': 'pratique courante, sans source publiée',
  'sources.cleaner-labels': 'Avertissements sur les étiquettes des produits ménagers',
  'sources.circuit-load': 'Somme des courants contre le calibre du circuit (NEC 210.23, CEI 60364)',
  'sources.heat-index': 'US National Weather Service, indice de chaleur et ses bandes',
  'sources.ansi-z535-4': 'ANSI Z535.4, signaux et étiquettes de sécurité des produits',
};
