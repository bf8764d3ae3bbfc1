import type { Section } from '../model/message.ts';

/** Citations to print, by the key of the source. */
export const sources = {
  'sources.oc-451-1': 'Shulchan Aruch, Orach Chaim 451:1',
  'sources.oc-451-3': 'Shulchan Aruch, Orach Chaim 451:3',
  'sources.oc-451-4': 'Shulchan Aruch, Orach Chaim 451:4',
  'sources.oc-451-4-gloss': 'Rema on Shulchan Aruch, Orach Chaim 451:4',
  'sources.mb-451-34': 'Mishnah Berurah 451:34',
  'sources.oc-451-5': 'Shulchan Aruch, Orach Chaim 451:5',
  'sources.oc-451-5-gloss': 'Rema on Shulchan Aruch, Orach Chaim 451:5',
  'sources.oc-451-6': 'Shulchan Aruch, Orach Chaim 451:6',
  'sources.oc-451-6-gloss': 'Rema on Shulchan Aruch, Orach Chaim 451:6',
  'sources.oc-451-8': 'Shulchan Aruch, Orach Chaim 451:8',
  'sources.oc-451-12-gloss': 'Rema on Shulchan Aruch, Orach Chaim 451:12',
  'sources.oc-451-14': 'Shulchan Aruch, Orach Chaim 451:14',
  'sources.oc-451-15': 'Shulchan Aruch, Orach Chaim 451:15; Mishnah Berurah 451:65',
  'sources.oc-451-17-gloss': 'Rema on Shulchan Aruch, Orach Chaim 451:17',
  'sources.oc-451-18-gloss': 'Rema on Shulchan Aruch, Orach Chaim 451:18',
  'sources.oc-451-20': 'Shulchan Aruch, Orach Chaim 451:20',
  'sources.oc-451-22': 'Shulchan Aruch, Orach Chaim 451:22',
  'sources.oc-451-22-gloss': 'Rema on Shulchan Aruch, Orach Chaim 451:22',
  'sources.oc-451-23': 'Shulchan Aruch, Orach Chaim 451:23',
  'sources.oc-451-24': 'Shulchan Aruch, Orach Chaim 451:24',
  'sources.oc-451-26': 'Shulchan Aruch, Orach Chaim 451:26',
  'sources.oc-451-26-gloss': 'Rema on Shulchan Aruch, Orach Chaim 451:26',
  'sources.oc-452-1': 'Shulchan Aruch, Orach Chaim 452:1; Rema there; 443:1',
  'sources.oc-452-2': 'Rema on Shulchan Aruch, Orach Chaim 452:2; Rema on Yoreh Deah 121:2',
  'sources.oc-452-6': 'Shulchan Aruch, Orach Chaim 452:6',
  'sources.mb-452-31': 'Mishnah Berurah 452:29-31',
  'sources.oc-452-7': 'Shulchan Aruch, Orach Chaim 452:7',
  'sources.oc-461-1': 'Shulchan Aruch, Orach Chaim 461:1',
  'sources.oc-509-5': 'Shulchan Aruch, Orach Chaim 509:5; Magen Avraham 509:11',
  'sources.ma-509-11': 'Magen Avraham 509:11',
  'sources.yd-121-4': 'Shulchan Aruch, Yoreh Deah 121:4-5',
  'sources.rest-before-fire':
    'Inferred from Siftei Kohen on Yoreh Deah 121:17: fire consumes what was absorbed',
  'sources.crack-as-pit': 'Inferred from Shulchan Aruch, Orach Chaim 451:3 and the Rema on 451:5',
  'sources.fine-mesh':
    'Inferred from the Rema on Orach Chaim 451:18: what has a fine mesh is judged as a sieve',
  'sources.clean-water-hose':
    'Inferred: only clean water ran inside, and outside it is as a handle (Rema on Orach Chaim 451:12)',
  'sources.oven-highest-heat': 'No code names an oven’s highest setting; later authorities differ',
  'sources.self-clean-cycle': 'No code names a self-clean cycle; later authorities',
  'sources.glass-zones': 'No code names glass over a heater; later authorities differ',
  'sources.microwave-steam': 'No code names a microwave; later authorities differ',
  'sources.pour-three-times': 'Later authorities; the code itself does not purge glazed clay',
  'sources.later-authorities': 'Not named in the codes; later authorities differ',
  'sources.trade-practice': 'common practice, no published source',
  'sources.makers-manuals': 'Owners’ manuals of ranges, ovens, kettles and hobs',
  'sources.moritz-henriques-1947':
    'A. R. Moritz, F. C. Henriques: Studies of thermal injury II, American Journal of Pathology 23 (1947) 695-720',
  'sources.callister-thermal-shock':
    'W. D. Callister: Materials Science and Engineering, thermal shock of brittle materials',
  'sources.gas-air':
    'Gas burner emissions: E. D. Lebel and others, Environmental Science & Technology 56 (2022); 1 h limits of the US EPA and the WHO',
  'sources.ptfe-fumes':
    'N. Caekebeke and others, Vlaams Diergeneeskundig Tijdschrift 85 (2016) 3-8',
  'sources.iso-13732-1-touch':
    'ISO 13732-1, Ergonomics of the thermal environment: contact with hot surfaces',
  'sources.repair-practice': 'common practice, no published source',
  'sources.cleaner-labels': 'Warnings on the labels of household cleaners',
  'sources.circuit-load':
    'Sum of currents against the rating of the circuit (NEC 210.23, IEC 60364)',
  'sources.heat-index': 'US National Weather Service, heat index and its bands',
  'sources.ansi-z535-4': 'ANSI Z535.4, Product safety signs and labels',
} satisfies Section;
