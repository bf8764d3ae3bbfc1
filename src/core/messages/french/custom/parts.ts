import type { parts as english } from '../../english/custom/parts.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Parts of fixtures: how each is treated, what is asked. */
export const parts: TranslationOf<typeof english> = {
  'custom.part.racks-in-cycle.reason':
    'Elles restent dedans pendant le cycle, comme la notice le permet, et sont cachérisées avec le four.',
  'custom.part.racks-new.reason':
    'Des aliments y brûlent sans liquide : il faut le feu, ou des neuves.',
  'custom.part.racks-new.ask':
    'Les grilles du four sont-elles remplacées, ou cachérisées par le feu ?',
  'custom.part.racks-new.why':
    'Ce sur quoi cuit de la pâte doit aller au rouge ; la chaleur d’un four ne les fait pas rougir.',
  'custom.part.racks-new.until-then': 'Achetez des grilles neuves ; les anciennes restent dehors.',
  'custom.part.racks-new.answer-1': 'Grilles neuves.',
  'custom.part.racks-new.answer-2':
    'Elles sont portées au rouge par quelqu’un qui a le feu pour cela.',
  'custom.part.racks.reason':
    'Des aliments y brûlent sans liquide : il faut le feu, ou des neuves.',
  'custom.part.racks.ask': 'Les grilles du four sont-elles remplacées, ou cachérisées par le feu ?',
  'custom.part.racks.why':
    'Ce sur quoi cuit de la pâte doit aller au rouge. Certains se contentent de la chaleur maximale du four.',
  'custom.part.racks.until-then': 'Achetez des grilles neuves ; les anciennes restent dehors.',
  'custom.part.racks.answer-1': 'Grilles neuves.',
  'custom.part.racks.answer-2': 'Elles sont portées au rouge par quelqu’un qui a le feu pour cela.',
  'custom.part.racks.answer-3': 'Une heure au four au maximum suffit.',
  'custom.part.side-rails.reason': 'Ils sont traités comme les grilles.',
  'custom.part.trays.reason':
    'Ce sur quoi l’on cuit doit aller au rouge, ce qu’une tôle mince ne supporte pas : achetez du neuf.',
  'custom.part.door-rim.reason': 'Aucun aliment n’y repose : il est nettoyé jusqu’au métal nu.',
  'custom.part.grates-new.reason':
    'Des aliments y ont brûlé sans liquide : pleine flamme jusqu’au rouge où elle atteint.',
  'custom.part.grates-new.ask': 'Comment les supports des brûleurs à gaz sont-ils cachérisés ?',
  'custom.part.grates-new.why':
    'Rougir sur la flamme, pyrolyse d’un four si le fabricant le permet, ou remplacement. Dans une cuisine qui n’était pas cacher, la chaleur légère ne sert pas.',
  'custom.part.grates-new.until-then': 'Pleine flamme jusqu’au rouge où elle atteint.',
  'custom.part.grates-new.answer-1': 'Au rouge sur la flamme.',
  'custom.part.grates-new.answer-2': 'Dans le cycle de pyrolyse du four.',
  'custom.part.grates-new.answer-3': 'Supports neufs.',
  'custom.part.grates.reason':
    'Des aliments y ont brûlé sans liquide : pleine flamme jusqu’au rouge où elle atteint.',
  'custom.part.grates.ask': 'Comment les supports des brûleurs à gaz sont-ils cachérisés ?',
  'custom.part.grates.why':
    'Rougir sur la flamme, pyrolyse d’un four si le fabricant le permet, ou remplacement. La Michna Beroura se contente d’une chaleur légère.',
  'custom.part.grates.until-then': 'Pleine flamme jusqu’au rouge où elle atteint.',
  'custom.part.grates.answer-1': 'Au rouge sur la flamme.',
  'custom.part.grates.answer-2': 'Dans le cycle de pyrolyse du four.',
  'custom.part.grates.answer-3': 'Supports neufs.',
  'custom.part.grates.answer-4': 'Chaleur légère : pleine flamme 30 minutes.',
  'custom.part.grates.answer-5': 'Chaleur légère : pleine flamme 15 minutes.',
  'custom.part.caps.reason':
    'Ils restent à leur place et prennent la pleine flamme avec leur brûleur.',
  'custom.part.drip-bowls.reason':
    'Des aliments y brûlent, et en acheter coûte moins que le travail.',
  'custom.part.surface-glass-rinsed.reason':
    'Le verre n’absorbe pas : rincer suffit selon cette coutume.',
  'custom.part.surface-glass.reason':
    'Le verre entre les zones reste moins chaud qu’elles et n’est pas cachérisé.',
  'custom.part.surface-glass.ask': 'Comment traiter le verre entre les zones ?',
  'custom.part.surface-glass.why': 'Certains le couvrent plaque froide, certains n’y posent rien.',
  'custom.part.surface-glass.until-then':
    'Ni casserole, ni cuillère, ni aliment sur le verre entre les zones.',
  'custom.part.surface-glass.answer-1': 'N’y posez rien.',
  'custom.part.surface-glass.answer-2': 'Couvrez-le tant que la plaque est froide.',
  'custom.part.surface-sephardic.reason':
    'Ce qui se renverse frit sur la surface autour des foyers : nettoyez-la et n’y posez rien.',
  'custom.part.surface.reason':
    'Un dessus de cuisinière est jugé comme de l’argile : nettoyez-le et n’y posez rien. Une tôle entre les deux est permise où le fabricant l’admet.',
  'custom.part.knobs.reason': 'Aucun aliment n’y repose : ôtées, trempées, séchées.',
  'custom.part.hood-filter.reason':
    'Graisse et vapeur restent dans sa maille, jugée comme un tamis : achetez-en un neuf.',
  'custom.part.sieve.reason': 'Un tamis n’est pas cachérisé : achetez-en un neuf.',
  'custom.part.not-reached.reason':
    'Son élément n’est cachérisé ni par la chaleur ni par l’eau : il est seulement nettoyé.',
  'custom.part.overflow.reason': 'Le jet est mené dans sa bouche pendant le versement de l’évier.',
  'custom.part.sprayer-hose.reason':
    'Seule de l’eau propre y coulait ; un flexible étroit n’est pas cachérisé par l’eau.',
  'custom.part.sprayer-hose.ask': 'L’extérieur de la douchette suffit-il, ou est-elle remplacée ?',
  'custom.part.sprayer-hose.why':
    'Seule de l’eau propre y coulait. Ce qui a un col étroit ou des tubes n’est pas cachérisé.',
  'custom.part.sprayer-hose.until-then': 'Gardez-la hors d’usage, ou posez-en une neuve.',
  'custom.part.sprayer-hose.answer-1': 'Versez sur la tête et le flexible, du dehors.',
  'custom.part.sprayer-hose.answer-2': 'Douchette et flexible neufs.',
  'custom.part.instant-hot-tap.reason':
    'Seule de l’eau propre y coulait ; des tubes étroits ne sont pas cachérisés par l’eau.',
  'custom.part.instant-hot-tap.ask':
    'Peut-on verser sur le bec du robinet d’eau bouillante, ou reste-t-il hors d’usage ?',
  'custom.part.instant-hot-tap.why':
    'Seule de l’eau propre y coulait. De la vapeur d’aliments a atteint le bec du dehors.',
  'custom.part.instant-hot-tap.until-then': 'Gardez-le hors d’usage.',
  'custom.part.instant-hot-tap.answer-1': 'Versez sur son bec, du dehors.',
  'custom.part.instant-hot-tap.answer-2': 'Un neuf.',
  'custom.part.instant-hot-tap.answer-3': 'Il reste hors d’usage.',
  'custom.part.disposer.reason':
    'Sa collerette retient des aliments entre ses lames : achetez-en une neuve. On ne mange rien qui sorte du broyeur.',
  'custom.part.plate-rinsed.reason': 'Le verre n’absorbe pas : rincer suffit selon cette coutume.',
  'custom.part.plate.reason':
    'Selon cette coutume le verre n’est pas cachérisé : achetez un plateau neuf.',
  'custom.part.plate-ring.reason': 'Aucun aliment n’y repose : lavez-le.',
};
