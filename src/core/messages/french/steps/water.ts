import type { water as english } from '../../english/steps/water.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Kettles: boiled, poured, and purged themselves. */
export const water: TranslationOf<typeof english> = {
  'steps.vessel.new': 'Bouilloire électrique neuve',
  /** One of several alike. */
  'steps.vessel.unit': ({ name, number }) => `${name} ${number}`,
  'steps.vessel.fill-on-burner': ({ litres, vessel, burner }, f) =>
    `Remplissez à ${f.fill(litres)} : ${f.say(vessel)}. Allumez dessous le foyer « ${burner} ».`,
  'steps.vessel.fill-plugged': ({ litres, vessel }, f) =>
    `Remplissez à ${f.fill(litres)} et allumez : ${f.say(vessel)}.`,
  'steps.vessel.plug-into': ({ circuit }) =>
    `Branchez directement sur : ${circuit} ; rien n’y tourne que ce que prévoit le plan.`,
  'steps.vessel.plug-anywhere':
    'Branchez directement sur une prise murale que rien d’autre n’utilise.',
  'steps.vessel.safe-on-burner': ({ burner, vessel }, f) =>
    `Éteignez le foyer « ${burner} » et laissez-y le récipient : ${f.say(vessel)}.`,
  'steps.vessel.safe-plugged': ({ vessel }, f) =>
    `Éteignez et laissez où personne ne peut heurter : ${f.say(vessel)}.`,

  'steps.boil.title': ({ kettle, of, fixture, vessel }, f) =>
    `Faites bouillir la bouilloire ${kettle} sur ${of} pour ${fixture} : ${f.say(vessel)}.`,
  'steps.boil.fill-mark': 'Jamais au-delà du repère.',
  'steps.boil.wait': 'Attendez les gros bouillons.',
  'steps.boil.wait-here': ({ boilingC }, f) =>
    `Attendez les gros bouillons, ici ${f.measure(boilingC, '°C', 1)}.`,
  'steps.boil.wait-low': ({ boilingC }, f) =>
    `Attendez les gros bouillons. Ici l’eau bout à ${f.measure(boilingC, '°C')} ; c’est bien l’ébullition, elle ne chauffera pas plus.`,
  'steps.boil.again': ({ againS }, f) =>
    `Rallumez-la juste avant de la lever : elle bout de nouveau en ${f.about(againS)}. Puis versez aussitôt.`,
  'steps.boil.burner-off': ({ burner }) =>
    `Éteignez le foyer « ${burner} » en la levant, en pleine ébullition, et versez aussitôt.`,
  'steps.boil.say': 'L’eau bout',
  'steps.boil.ask':
    'La bouilloire a-t-elle bouilli à gros bouillons, et l’eau est-elle encore chaude ?',
  'steps.boil.expect': ({ isAhead }) =>
    isAhead ? 'Jusqu’à l’ébullition (prévu)' : 'Bout à peu près maintenant',

  'steps.boil-over.title': ({ vessel }, f) =>
    `Cachérisez la bouilloire elle-même : ${f.say(vessel)}.`,
  'steps.boil-over.overflow-on-burner': ({ burner }) =>
    `Éteignez le foyer « ${burner} ». Dans l’évier, descendez lentement de l’acier propre et chaud dans la bouilloire, jusqu’à ce que tout son bord déborde.`,
  'steps.boil-over.overflow-plugged':
    'Débranchez-la, posez-la dans l’évier, et descendez-y lentement de l’acier propre et chaud, jusqu’à ce que tout son bord déborde.',
  'steps.boil-over.steel':
    'Avec une longue pince, à bout de bras : une pièce d’acier chauffée entre-temps sur un foyer. Pas de pierre du dehors : elle peut éclater.',
  'steps.boil-over.base': 'Son socle reste loin de l’eau.',
  'steps.boil-over.spout':
    'Un bec ou un col étroit n’est pas atteint ainsi : demandez, ou achetez une bouilloire neuve.',
  'steps.boil-over.overflow-say': 'Elle a débordé',
  'steps.boil-over.overflow-ask': 'L’eau bouillante a-t-elle débordé sur tout le bord ?',
  'steps.boil-over.cold': 'Videz-la et rincez-la à l’eau froide.',
  'steps.cold.say-rinsed': 'Rincé à froid',

  'steps.dry.title': ({ fixture }) => `Séchez partout : ${fixture}.`,
  'steps.dry.reason': 'L’eau qui reste dessus refroidit le jet avant la surface : on verse à sec.',
  'steps.dry.seams': 'Joints et coins aussi.',
  'steps.dry.kettle-away':
    'Bouilloire et socle ailleurs, sur une prise à l’abri des éclaboussures.',
  'steps.dry.drain': 'Autour du robinet aussi. Laissez la bonde ouverte.',
  'steps.dry.clear-to': ({ names, to }, f) =>
    `Ôtez-en ${f.list(names.map((one) => f.say(one)))} et posez sur : ${to}. Ils y restent jusqu’à ce que cet endroit soit de nouveau sec.`,
  'steps.dry.clear': ({ names }, f) =>
    `Ôtez-en ${f.list(names.map((one) => f.say(one)))}, hors de la cuisine, jusqu’à ce que cet endroit soit de nouveau sec.`,
  'steps.dry.say': 'Sec',
  'steps.air-dry.title': ({ fixture }) => `Essuyez, puis laissez sécher découvert : ${fixture}.`,
  'steps.air-dry.reason':
    'Une couverture sur de l’eau reste mouillée, glisse et soulève le bois dessous.',
  'steps.air-dry.timer': ({ name }, f) => `Séchage : ${f.say(name)}`,
  'steps.air-dry.timer-short': 'Séchage',

  'steps.pour.title': ({ kettle, of, fixture }) =>
    `Versez la bouilloire ${kettle} sur ${of} : ${fixture}.`,
  'steps.pour.pour': ({ kettle, of, fixture }) =>
    `Versez la bouilloire ${kettle} sur ${of} : ${fixture}. Le jet doit toucher chaque point.`,
  'steps.pour.line': ({ kettle }) =>
    `Bouilloire ${kettle} : la partie bleue, du repère ${kettle} au repère ${kettle + 1}.`,
  'steps.pour.line-to-end': ({ kettle }) =>
    `Bouilloire ${kettle} : la partie bleue, du repère ${kettle} jusqu’au bout.`,
  'steps.pour.dry-first': 'Épongez ce qui reste à verser : l’eau laissée dessus refroidit le jet.',
  'steps.pour.drain-open': 'Bonde ouverte, pour que l’eau qui court devant s’écoule.',
  'steps.pour.wipe-floor':
    'Essuyez parois et fond entre les bouilloires, avant que le jet y arrive.',
  'steps.pour.way.back-to-front':
    'Du bord arrière vers l’avant, bande par bande ; laissez l’eau couler par l’avant.',
  'steps.pour.way.shortest':
    'Bande par bande comme dessiné : le plus court chemin, selon votre choix ; laissez l’eau couler par l’avant.',
  'steps.pour.way.far-to-near': 'Bande par bande vers vous, la plus éloignée d’abord.',
  'steps.pour.stand': ({ sides }, f) =>
    `Tenez-vous où les pieds sont dessinés : ${sides.map((side) => f.say(side)).join(', puis ')}.`,
  'steps.pour.side.far': 'côté opposé',
  'steps.pour.side.near': 'côté proche',
  'steps.pour.side.left': 'côté gauche',
  'steps.pour.side.right': 'côté droit',
  'steps.pour.unreached':
    'La zone hachurée est hors de portée de l’endroit où vous pouvez vous tenir : aucune bouilloire n’y est prévue. Voyez les remarques du plan.',
  'steps.pour.round': ({ round, rounds }) => `Passage ${round} sur ${rounds}, sur le tout.`,
  'steps.pour.stone':
    'Avec une longue pince, déplacez l’acier chaud dans le jet, sur chaque point.',
  'steps.pour.say': 'Versé',
  'steps.pour.ask': 'Cette bouilloire a-t-elle été versée jusqu’au bout ?',
  'steps.pour.expect': ({ isAhead }) =>
    isAhead ? 'Jusqu’à ce qu’elle soit vide (prévu)' : 'Vide à peu près maintenant',
  'steps.pour.cold': 'Versez aussitôt de l’eau froide au même endroit.',
  'steps.pour.cold-where': 'Seulement où l’eau bouillante est passée.',
  'steps.pour.swab': 'Épongez ce qui reste à verser.',
  'steps.pour.cold-say': 'Eau froide versée',
  'steps.pour.cold-ask': 'L’eau froide a-t-elle été versée dessus ?',
  'steps.pour.cold-timer': 'Eau froide maintenant',
  'steps.pour.safe': 'Posez la bouilloire où personne ne peut la heurter.',

  /** Why a plan was changed while it ran. */
  'steps.ran-out': ({ kettle }) =>
    `La bouilloire ${kettle} s’est vidée trop tôt ; le reste est réparti de nouveau.`,

  'steps.pour.not-drawn': ({ why }, f) =>
    `Le trajet des bouilloires ne peut être dessiné (${f.say(why)}) : l’eau est répartie également. Vérifiez vous-même que chaque point est atteint.`,

  'steps.sink.spout-and-tap': 'Bec et robinet',
  'steps.sink.handles': ({ count }, f) => f.plural(count, { one: 'Poignée', other: 'Poignées' }),
  'steps.sink.deck': 'Plage autour des cuves',
  'steps.sink.deck-and-drainboard': 'Plage et égouttoir',
  'steps.sink.rim': 'Rebord',
  'steps.sink.wall': 'Parois',
  'steps.sink.floor': 'Fond',
  'steps.sink.bowl.rim': ({ bowl }) => `Cuve ${bowl} : rebord`,
  'steps.sink.bowl.wall': ({ bowl }) => `Cuve ${bowl} : parois`,
  'steps.sink.bowl.floor': ({ bowl }) => `Cuve ${bowl} : fond`,
  /** A part that two kettles share, and what of it is this one's. */
  'steps.sink.shared': ({ part, pieces }, f) =>
    `${f.say(part)} (${pieces.map((one) => f.say(one)).join(', ')})`,
  'steps.sink.the-rest': ({ part }, f) => `${f.say(part)}, le reste`,
  'steps.sink.piece.back': 'arrière',
  'steps.sink.piece.right': 'droite',
  'steps.sink.piece.front': 'avant',
  'steps.sink.piece.left': 'gauche',
  'steps.sink.piece.lane': ({ number }) => `bande ${number}`,
  'steps.sink.piece.handle': ({ number }) =>
    ['première', 'deuxième', 'troisième', 'quatrième'][number - 1] ?? String(number),
};
