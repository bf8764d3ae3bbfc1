import type { appliances as english } from '../../english/custom/appliances.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Rows of the customs for appliances and cupboards: why, what may change it, what is asked. */
export const appliances: TranslationOf<typeof english> = {
  'custom.way.hood.reason': 'Seules vapeur et graisse l’atteignent, et rien n’y est cuit.',
  'custom.way.hood.would-change': 'Dites-nous si quelque chose en a coulé dans des casseroles.',
  'custom.way.hood.note': 'Ne l’utilisez pas sans ses filtres.',
  'custom.way.microwave.reason':
    'Il a absorbé de la vapeur, et la vapeur d’eau bouillante dedans est la réponse usuelle. Aucun code ne le nomme, et l’un d’eux demande un récipient qui bout où il y avait de la vapeur.',
  'custom.way.microwave.would-change': 'Dites-nous si son revêtement est fendu ou s’il a un gril.',
  'custom.way.microwave.ask':
    'Le micro-ondes peut-il être cachérisé par la vapeur, et combien de minutes ?',
  'custom.way.microwave.why': 'Aucun code ne le nomme. Les avis vont de 10 à 20 minutes.',
  'custom.way.microwave.until-then': 'Vapeur pendant 20 minutes.',
  'custom.way.microwave.answer-1': 'Vapeur pendant 10 minutes.',
  'custom.way.microwave.answer-2': 'Vapeur pendant 20 minutes.',
  'custom.way.dishwasher.reason':
    'De l’eau chaude chargée d’aliments passe sur la cuve, les paniers et la pompe ; les avis diffèrent si un cycle les cachérise.',
  'custom.way.dishwasher.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.dishwasher.ask': 'Ce lave-vaisselle peut-il être cachérisé, et par quel cycle ?',
  'custom.way.dishwasher.why':
    'Cuve de métal et cuve de plastique sont jugées autrement ; paniers et filtre, question à part.',
  'custom.way.dishwasher.until-then': 'Nettoyez-le et gardez-le hors d’usage.',
  'custom.way.dishwasher.answer-1':
    'Nettoyez-le, puis faites-le tourner à vide, cycle le plus chaud.',
  'custom.way.dishwasher.answer-2': 'Nettoyez-le seulement.',
  'custom.way.dishwasher.answer-3': 'Il reste hors d’usage.',
  'custom.way.warming-drawer.reason':
    'Il n’atteint pas une chaleur qui cachérise : il est nettoyé et tapissé.',
  'custom.way.warming-drawer.would-change':
    'Dites-nous si sa notice dit qu’il atteint la chaleur d’un four.',
  'custom.way.warming-drawer.ask': 'Le tiroir chauffant peut-il être cachérisé, et comment ?',
  'custom.way.warming-drawer.why':
    'Il réchauffe des plats couverts et atteint rarement une chaleur qui cachérise.',
  'custom.way.warming-drawer.until-then': 'Tapissez-le, et n’y mettez que des aliments couverts.',
  'custom.way.warming-drawer.answer-1': 'Chauffez-le au réglage maximal.',
  'custom.way.warming-drawer.answer-2': 'Tapissez-le.',
  'custom.way.cold-passover.reason':
    'Il n’a servi qu’à froid : nettoyer suffit, et beaucoup tapissent les étagères pour Pessah.',
  'custom.way.cold-passover.would-change':
    'Votre coutume peut ne pas tapisser : demandez. Dites-nous si des casseroles chaudes y ont été posées, ou si du liquide y est resté un jour.',
  'custom.way.cold.reason':
    'Il n’a servi qu’à froid : un nettoyage à fond et un rinçage suffisent.',
  'custom.way.cold.would-change':
    'Dites-nous si des casseroles chaudes y ont été posées, ou si du liquide y est resté un jour.',
  'custom.way.shelf-raw.reason':
    'Le bois brut retient miettes et humidité : il est nettoyé et tapissé ; il n’a pas servi à chaud.',
  'custom.way.shelf-raw.would-change': 'Dites-nous si des aliments chauds y ont été rangés.',
  'custom.way.shelf-unknown.reason':
    'La matière des étagères n’est pas connue : elles sont nettoyées et tapissées.',
  'custom.way.shelf-unknown.would-change': 'Dites-nous en quelle matière c’est.',
  'custom.way.shelf-unknown.ask': 'En quelle matière sont ces étagères ?',
  'custom.way.shelf-unknown.why':
    'Le bois brut retient les miettes ; les surfaces fermées sont seulement nettoyées.',
  'custom.way.shelf-unknown.until-then': 'Nettoyez-les et tapissez-les.',
  'custom.way.shelf.reason': 'Il n’a servi qu’à froid : un nettoyage à fond suffit.',
  'custom.way.shelf.would-change': 'Dites-nous si des aliments chauds y ont été rangés.',
};
