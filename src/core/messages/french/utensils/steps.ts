import type { utensilSteps as english } from '../../english/utensils/steps.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Utensils as steps of the run: batches, pots, heat, soaking. */
export const utensilSteps: TranslationOf<typeof english> = {
  'utensils.all': 'Ustensiles',

  'cautions.dip-pot.say':
    'Longue pince ou filet à long manche, visage et bras à côté de la marmite. Descendez lentement, ne la quittez jamais tant qu’elle bout : elle projette, et sa vapeur brûle.',

  'utensils.step.clean': 'Lavez les ustensiles.',
  'utensils.step.clean-these': ({ items }, f) =>
    `Lavez : ${f.list(items.map((item) => f.say(item)))}.`,
  'utensils.step.joints':
    'Ouvrez ce qui s’ouvre : ôtez rouille, étiquettes, graisse et colle, des manches aussi.',
  'utensils.step.soak-first': ({ items }, f) =>
    `Une fois lavés, mettez dans l’eau froide, entièrement dessous : ${f.list(items.map((item) => f.say(item)))}.`,
  'utensils.step.put-away': ({ items }, f) =>
    `Non cachérisé ici, à ranger ou à remplacer : ${f.list(items.map((item) => f.say(item)))}.`,

  'utensils.step.boil': ({ vessel, group }, f) =>
    `Faites bouillir de l’eau propre pour les ustensiles (${f.say(group)}) : ${f.say(vessel)}.`,
  'utensils.step.lid':
    'Couvercle dessus jusqu’à l’ébullition ; ôtez-le en l’inclinant loin de vous.',
  'utensils.step.boil-ask': 'L’eau bout-elle à gros bouillons ?',
  'utensils.step.overflow': ({ burner }) =>
    `Remplissez à ras bord et éteignez le foyer « ${burner} ». Descendez-y lentement de l’acier propre et chaud, jusqu’à ce que tout le bord déborde.`,
  'utensils.step.overflow-hob':
    'Là où elle est : personne ne la porte pleine. Reculez, et épongez la plaque avant de rallumer.',
  'utensils.step.empty':
    'Videz-la par petites quantités ; ne portez jamais la marmite pleine et chaude.',

  'utensils.step.batch': ({ number, of, group }, f) =>
    `Trempez le lot ${f.number(number)} sur ${f.number(of)} : ${f.say(group)}.`,
  'utensils.step.top-up': ({ litres }, f) =>
    `Complétez la marmite à ${f.fill(litres)} et attendez les gros bouillons.`,
  'utensils.step.lower': 'Descendez-le dans l’eau bouillante, entièrement dessous.',
  'utensils.step.under': 'C’est dessous',
  'utensils.step.under-ask': 'Tout était-il entièrement sous l’eau bouillante ?',
  'utensils.step.again': 'Laissez-le dessous jusqu’à ce que l’eau bouille de nouveau.',
  'utensils.step.drop': ({ mixedC, recoverS }, f) =>
    `L’eau tombe à environ ${f.measure(mixedC, '°C', 1)} et bout de nouveau après ${f.about(recoverS.typical)}, au plus ${f.about(recoverS.high)}.`,
  'utensils.step.again-say': 'Elle bout de nouveau',
  'utensils.step.again-ask': 'L’eau a-t-elle bouilli de nouveau avec les objets dedans ?',
  'utensils.step.turn': 'Levez-le, tournez-le dans la pince, et redescendez-le.',
  'utensils.step.other-half':
    'Levez-le, tenez-le par la moitié trempée, et descendez l’autre, un peu au-delà du milieu.',
  'utensils.step.one-by-one':
    'Un par un : dessous jusqu’à ce que l’eau bouille de nouveau, tourné, dessous encore jusqu’à ce qu’elle bouille.',
  'utensils.step.each-cold': 'Chacun va de la marmite tout droit dans l’eau froide.',
  'utensils.step.all-twice': 'Tous y sont allés deux fois',
  'utensils.step.dips-expect': ({ isAhead }) =>
    isAhead ? 'Jusqu’à ce que tout soit trempé (prévu)' : 'Tout est trempé à peu près maintenant',
  'utensils.step.cold': 'De la marmite dans l’eau froide, aussitôt.',
  'utensils.step.next-batch': ({ burner }) =>
    `Le lot suivant passe dans la même eau. Qui s’arrête ici éteint le foyer « ${burner} ».`,
  'utensils.step.off': ({ burner }) => `Éteignez le foyer « ${burner} ».`,
  'utensils.step.off-say': 'Il est éteint',

  'utensils.step.own-rim': ({ name, piece, of }, f) =>
    `Cachérisez par son propre bord : ${f.say(name)}${of > 1 ? `, ${piece} sur ${of}` : ''}.`,
  'utensils.step.own-rim-fill': ({ burner }) =>
    `Remplissez jusqu’à deux doigts du bord et allumez dessous le foyer « ${burner} ».`,
  'utensils.step.own-rim-safe': ({ burner }) =>
    `Éteignez le foyer « ${burner} » et laissez-y la marmite.`,
  'utensils.step.outside':
    'Si le dehors a touché des aliments chauds, cela ne suffit pas : demandez.',

  'utensils.step.glow-title': 'Chauffez les ustensiles au rouge.',
  'utensils.step.light-title':
    'Chauffez les ustensiles jusqu’à ce que de la paille roussisse de l’autre côté.',
  'utensils.step.glow': ({ burner }) =>
    `Un par un sur le foyer « ${burner} » au maximum, jusqu’à ce que tout ait rougi.`,
  'utensils.step.light-heat': ({ burner }) =>
    `Un par un sur le foyer « ${burner} », jusqu’à ce que paille ou papier roussisse de l’autre côté.`,
  'utensils.step.fire-tongs':
    'Longue pince, gants secs. Cela brûle longtemps après n’être plus rouge : posez-le sur de l’acier ou de la pierre, et ne touchez à rien.',
  'utensils.step.glowed': 'Tous ont rougi',
  'utensils.step.scorched': 'Cela a roussi pour tous',

  'utensils.step.soak': ({ day, of }) => `Trempez dans l’eau froide : jour ${day} sur ${of}.`,
  'utensils.step.soak-under': 'Entièrement dessous ; rien d’autre dans cette eau.',
  'utensils.step.soak-timer': ({ day, of }) => `Trempage, jour ${day} sur ${of}`,
  'utensils.step.change': 'Jetez l’eau et remplissez d’eau froide propre.',
  'utensils.step.change-say': 'Changée',
  'utensils.step.soaked': 'Sortez-les de l’eau et rincez-les.',
  'utensils.step.soaked-say': 'Rincés',
};
