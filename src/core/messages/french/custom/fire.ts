import type { fire as english } from '../../english/custom/fire.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Rows of the customs for hobs and ovens: why, what may change it, what is asked. */
export const fire: TranslationOf<typeof english> = {
  'custom.way.burner-induction.ashkenazic.reason':
    'L’induction chauffe la casserole et non elle-même : elle ne rougit jamais, et selon cette coutume son verre n’est pas cachérisé par l’eau.',
  'custom.way.burner-induction.ashkenazic.would-change':
    'La parole de votre rabbin peut le changer.',
  'custom.way.burner-induction.ashkenazic.ask':
    'Comment une plaque à induction peut-elle être cachérisée ?',
  'custom.way.burner-induction.ashkenazic.why':
    'Elle ne rougit pas. Certains versent sur le verre refroidi où le fabricant le permet, certains couvrent les zones.',
  'custom.way.burner-induction.ashkenazic.until-then': 'Nettoyez-la et gardez-la hors d’usage.',
  'custom.way.burner-induction.ashkenazic.answer-1':
    'Versez sur le verre refroidi, où le fabricant le permet.',
  'custom.way.burner-induction.ashkenazic.answer-2': 'Nettoyez-la et couvrez les zones.',
  'custom.way.burner-induction.ashkenazic.answer-3': 'Elle reste hors d’usage.',
  'custom.way.burner-induction.sephardic.reason':
    'L’induction chauffe la casserole et non elle-même : elle ne rougit jamais. Selon cette coutume le verre n’absorbe pas ; si cela vaut pour une plaque, c’est une question.',
  'custom.way.burner-induction.sephardic.would-change':
    'La parole de votre rabbin peut le changer.',
  'custom.way.burner-induction.sephardic.ask':
    'Le verre d’une plaque à induction est-il rincé comme un autre verre, ou ébouillanté ?',
  'custom.way.burner-induction.sephardic.why':
    'Selon cette coutume le verre est rincé. Aucun code ne nomme un verre au-dessus d’une chauffe, et ce qui y a frit était sur le feu.',
  'custom.way.burner-induction.sephardic.until-then': 'Nettoyez-la et gardez-la hors d’usage.',
  'custom.way.burner-induction.sephardic.answer-1': 'Nettoyez et rincez comme un autre verre.',
  'custom.way.burner-induction.sephardic.answer-2':
    'Versez sur le verre refroidi, où le fabricant le permet.',
  'custom.way.burner-induction.sephardic.answer-3': 'Elle reste hors d’usage.',
  'custom.way.burner-mix-up.reason':
    'Des aliments y ont brûlé sur le feu sans liquide. Si ces aliments étaient permis en eux-mêmes, une chaleur moindre suffit.',
  'custom.way.burner-mix-up.would-change': 'Dites-nous ce qui s’y est renversé.',
  'custom.way.burner-mix-up.ask':
    'L’aliment était-il permis en lui-même (viande sur du lait, ou lait sur de la viande), ou interdit ?',
  'custom.way.burner-mix-up.why':
    'Ce qui a été absorbé quand c’était permis se cachérise à chaleur légère ; ce qui était interdit doit aller au rouge.',
  'custom.way.burner-mix-up.until-then': 'Portez-le au rouge.',
  'custom.way.burner-mix-up.answer-1': 'Permis : pleine chaleur, 30 minutes, sans aller au rouge.',
  'custom.way.burner-mix-up.answer-2': 'Interdit, ou personne ne sait : au rouge.',
  'custom.way.burner-glass.reason':
    'Des aliments ont brûlé sur la zone, sur le feu : le ruban dessous est porté au rouge.',
  'custom.way.burner-glass.would-change': 'Votre rabbin peut nommer d’autres minutes.',
  'custom.way.burner-gas.sephardic.reason':
    'Des aliments ont brûlé sur le support, sur le feu, sans liquide : il est cachérisé à pleine flamme jusqu’au rouge où elle atteint.',
  'custom.way.burner-gas.sephardic.would-change':
    'Votre rabbin peut nommer d’autres minutes. Les supports font l’objet d’une question à part.',
  'custom.way.burner-gas.sephardic.note':
    'Supports et têtes : pleine flamme, rouges où la flamme atteint.',
  'custom.way.burner-gas.ashkenazic.reason':
    'Des aliments ont brûlé sur le support, sur le feu, sans liquide : il est cachérisé à pleine flamme jusqu’au rouge où elle atteint.',
  'custom.way.burner-gas.ashkenazic.would-change':
    'Votre rabbin peut nommer d’autres minutes. Les supports font l’objet d’une question à part.',
  'custom.way.burner-gas.ashkenazic.note':
    'Supports et têtes : pleine flamme, rouges où la flamme atteint. Beaucoup posent une tôle sur les foyers pour étaler la chaleur : seulement sur une cuisinière en métal dont le fabricant le permet.',
  'custom.way.burner-plate.reason':
    'Des aliments ont brûlé sur la plaque, sur le feu, sans liquide : elle est portée au rouge. Beaucoup de plaques coupent avant de rougir.',
  'custom.way.burner-plate.would-change': 'Dites-nous si elle rougit dans une pièce sombre.',
  'custom.way.burner-plate.ask':
    'Une plaque fermée souvent ne rougit pas. Sa chaleur maximale suffit-elle ?',
  'custom.way.burner-plate.why':
    'Les codes demandent de porter au rouge ; beaucoup de ces plaques n’y arrivent pas.',
  'custom.way.burner-plate.until-then':
    'Portez-la au rouge dans une pièce sombre ; une plaque qui ne rougit pas reste hors d’usage.',
  'custom.way.burner-plate.answer-1': 'La chaleur maximale pendant 30 minutes suffit.',
  'custom.way.burner-plate.answer-2': 'Elle doit rougir ; sinon elle reste hors d’usage.',
  'custom.way.burner-plate.answer-3': 'La chaleur maximale pendant 15 minutes suffit.',
  'custom.way.burner-fire.reason':
    'Des aliments ont brûlé sur l’élément, sur le feu, sans liquide : il est porté au rouge.',
  'custom.way.burner-fire.would-change': 'Votre rabbin peut nommer d’autres minutes.',
  'custom.way.burner-fire.ask': 'Combien de minutes une spirale doit-elle rester rouge ?',
  'custom.way.burner-fire.why':
    'Les codes demandent de porter au rouge, sans nommer de minutes ; l’usage va de 5 à 30.',
  'custom.way.burner-fire.until-then': 'Laissez-la rouge 30 minutes.',
  'custom.way.burner-fire.answer-1': '30 minutes.',
  'custom.way.burner-fire.answer-2': '15 minutes.',
  'custom.way.burner-fire.answer-3': '5 minutes.',
  'custom.way.oven-pyrolytic.reason':
    'Des aliments ont brûlé sur ses parois sans liquide ; le cycle complet de pyrolyse les consume. Aucun code ne le nomme : un four se cachérise à la chaleur jusqu’à ce que jaillissent des étincelles.',
  'custom.way.oven-pyrolytic.would-change':
    'Dites-nous si sa notice interdit le cycle. Un cycle écourté ne compte pas.',
  'custom.way.oven-pyrolytic.note': 'Les grilles n’y vont que si la notice les y admet.',
  'custom.way.oven-new.reason':
    'Il n’a pas de pyrolyse (vapeur et catalyse ne cachérisent pas). Aucun code ne nomme le réglage maximal d’un four : ils demandent une chaleur jusqu’aux étincelles. Dans une cuisine qui n’était pas cacher, la chaleur légère ne sert pas où il faut le feu.',
  'custom.way.oven-new.would-change': 'Votre rabbin peut nommer d’autres heures.',
  'custom.way.oven-new.ask':
    'Le réglage maximal suffit-il sans aller au rouge, et combien de temps ?',
  'custom.way.oven-new.why':
    'Les avis vont d’une heure à deux ; certains veulent qu’il aille au rouge, ce qu’un tel four n’atteint pas.',
  'custom.way.oven-new.until-then':
    'Réglage maximal deux heures ; aliments seulement couverts ou sur un insert.',
  'custom.way.oven-new.answer-1': 'Une heure suffit.',
  'custom.way.oven-new.answer-2': 'Deux heures suffisent.',
  'custom.way.oven-new.answer-3': 'Deux heures, aliments seulement couverts ou sur un insert.',
  'custom.way.oven-new.answer-4':
    'Il doit rougir, ce que ce four ne peut pas : aliments seulement couverts ou sur un insert.',
  'custom.way.oven-plain.reason':
    'Il n’a pas de pyrolyse (vapeur et catalyse ne cachérisent pas). Aucun code ne nomme le réglage maximal d’un four : ils demandent une chaleur jusqu’aux étincelles.',
  'custom.way.oven-plain.would-change': 'Votre rabbin peut nommer d’autres heures.',
  'custom.way.oven-plain.ask':
    'Le réglage maximal suffit-il sans aller au rouge, et combien de temps ?',
  'custom.way.oven-plain.why':
    'Les avis vont d’une heure à deux ; certains veulent qu’il aille au rouge, ce qu’un tel four n’atteint pas.',
  'custom.way.oven-plain.until-then':
    'Réglage maximal deux heures ; aliments seulement couverts ou sur un insert.',
  'custom.way.oven-plain.answer-1': 'Une heure suffit.',
  'custom.way.oven-plain.answer-2': 'Deux heures suffisent.',
  'custom.way.oven-plain.answer-3': 'Deux heures, aliments seulement couverts ou sur un insert.',
  'custom.way.oven-plain.answer-4':
    'Il doit rougir, ce que ce four ne peut pas : aliments seulement couverts ou sur un insert.',
  'custom.way.oven-mix-up.reason':
    'Des aliments y ont brûlé sans liquide. Si ces aliments étaient permis en eux-mêmes, une chaleur moindre suffit.',
  'custom.way.oven-mix-up.would-change': 'Dites-nous ce qui s’y est renversé.',
  'custom.way.oven-mix-up.ask':
    'L’aliment était-il permis en lui-même (viande sur du lait, ou lait sur de la viande), ou interdit ?',
  'custom.way.oven-mix-up.why':
    'Ce qui a été absorbé quand c’était permis se cachérise à chaleur légère.',
  'custom.way.oven-mix-up.until-then':
    'Réglage maximal deux heures ; aliments seulement couverts ou sur un insert.',
  'custom.way.oven-mix-up.answer-1': 'Permis : une heure au réglage maximal.',
  'custom.way.oven-mix-up.answer-2':
    'Interdit, ou personne ne sait : deux heures, aliments seulement couverts ou sur un insert.',
};
