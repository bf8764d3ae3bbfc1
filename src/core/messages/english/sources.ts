import type { Section } from '../model/message.ts';

/** Citations to print, by the key of the source. */
export const sources = {
  'sources.oc-451-1': 'Shulchan Aruch, Orach Chaim 451:1',
  'sources.oc-451-3-8': 'Shulchan Aruch, Orach Chaim 451:3-8',
  'sources.oc-451-4': 'Shulchan Aruch, Orach Chaim 451:4',
  'sources.oc-451-4-gloss': 'Rema on Shulchan Aruch, Orach Chaim 451:4',
  'sources.oc-451-5': 'Shulchan Aruch, Orach Chaim 451:5',
  'sources.oc-451-6': 'Shulchan Aruch, Orach Chaim 451:6',
  'sources.oc-451-20': 'Shulchan Aruch, Orach Chaim 451:20',
  'sources.oc-451-22': 'Shulchan Aruch, Orach Chaim 451:22',
  'sources.oc-451-26': 'Shulchan Aruch, Orach Chaim 451:26',
  'sources.oc-451-26-gloss': 'Rema on Shulchan Aruch, Orach Chaim 451:26',
  'sources.oc-452-1': 'Shulchan Aruch, Orach Chaim 452:1 and 443:1',
  'sources.oc-452-2': 'Shulchan Aruch, Orach Chaim 452:2 and Yoreh Deah 121:2',
  'sources.oc-452-7': 'Shulchan Aruch, Orach Chaim 452:7',
  'sources.ma-509-11': 'Magen Avraham 509:11',
  'sources.later-authorities': 'Not named in the codes; later authorities differ',
  'sources.trade-practice': 'common practice, no published source',
  'sources.burn-first-aid':
    'ANZCOR Guideline 9.1.3, First Aid for Burns; D. A. Zideman and others: European Resuscitation Council Guidelines 2021: First aid, Resuscitation 161 (2021) 270-290',
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
