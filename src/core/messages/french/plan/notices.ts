import type { notices as english } from '../../english/plan/notices.ts';
import type { TranslationOf } from '../../model/translation.ts';
import type { Formatter, Message } from '../../model/message.ts';

/** "20 % de plus que calculé" ; moins d’un pour cent : "comme calculé". */
function shareText(percent: number): string {
  const whole = Math.round(percent);
  if (whole === 0) return 'comme calculé';
  return `${Math.abs(whole)} % de temps en ${whole > 0 ? 'plus' : 'moins'} que calculé`;
}

/** What is late: by how much, and where the calendar is known when it ends and after which day of rest. */
type Ends = { endsWallMs?: number; zone?: string; after?: Message };

/** "jeudi 22 avril 20:33 (après : Pessah, derniers jours), ". */
function ends({ endsWallMs, zone, after }: Ends, f: Formatter): string {
  if (endsWallMs === undefined || zone === undefined) return '';
  const moment = f.moment(endsWallMs, zone);
  return after ? `${moment}, après ${f.say(after)}, ` : `${moment}, `;
}

/** More names than this are counted, not listed. */
const MOST_NAMES = 5;

function someOf(names: readonly string[], f: Formatter): string {
  const more = names.length - MOST_NAMES;
  return f.list(
    more > 0
      ? [
          ...names.slice(0, MOST_NAMES),
          `${f.number(more)} ${f.plural(more, { one: 'autre', other: 'autres' })}`,
        ]
      : names,
  );
}

function bottleneck(decidedBy: readonly Message[] | undefined, f: Formatter): string {
  if (!decidedBy || decidedBy.length === 0) return '';
  return ` Le plus long jusqu’à cette fin : ${decidedBy.map((one) => f.say(one)).join(' ; ')}.`;
}

export const notices: TranslationOf<typeof english> = {
  'plan.notice.last-hot.counts': ({ names, wallMs, zone }, f) =>
    `Les repos sont prévus depuis le dernier usage à chaud, ${f.moment(wallMs, zone)} : ${f.list(names)}. Nettoyez à l’eau froide seulement ; l’heure sera à confirmer pendant le chantier.`,
  'plan.notice.last-hot.later': ({ names, wall }, f) =>
    `Dernier usage à chaud : ${wall}, après le début du travail : ${f.list(names)}. Il ne compte pas, seul un usage d’avant le début compte. Corrigez-le dans la cuisine, ou commencez plus tard.`,
  'plan.notice.last-hot.long-ago': ({ names, wall, mostDays }, f) =>
    `Dernier usage à chaud : ${wall} : ${f.list(names)}. À plus de ${f.number(mostDays)} jours du début il ne compte pas ; indiquez le dernier dans la cuisine.`,
  'plan.notice.last-hot.unplaced': ({ names, wall }, f) =>
    `Dernier usage à chaud : ${wall} : ${f.list(names)}. Il ne compte pas tant que la cuisine n’a pas de lieu et le plan pas de début ; indiquez les deux.`,
  'plan.notice.circuit-overloaded': ({ name, drawsA, circuit, ratingA }, f) =>
    `${f.capital(f.say(name))} demande ${f.number(drawsA)} A, et « ${circuit} » supporte ${f.shortNumber(ratingA)} A : faites vérifier par un électricien avant de chauffer.`,
  'plan.notice.circuit-shared': ({ circuit, ratingA, names, drawsA }, f) =>
    `${circuit} (${f.shortNumber(ratingA)} A) ne supporte pas ensemble ${someOf(names.map(f.say), f)} (${f.number(drawsA)} A) : jamais en même temps, le plan s’y tient.`,
  'plan.notice.boils-low': ({ boilingC }, f) =>
    `Ici l’eau bout à ${f.measure(boilingC, '°C')} ; c’est bien l’ébullition. Elle ne chauffera pas plus, si longtemps qu’elle reste ; la main va plus lentement où il le faut.`,
  'plan.notice.may-stay-dark': ({ cooktop, names }, f) =>
    `${cooktop} : ${f.list(names)} ${f.plural(names.length, { one: 'peut', other: 'peuvent' })} ne jamais rougir sans casserole, par détection ou par manque de tension. Essayez dans le noir avant le jour ; s’il reste sombre, demandez comment le cachériser.`,
  'plan.burner': ({ burner }) => `le foyer « ${burner} »`,
  'plan.notice.burners-at-once': ({ atOnce, limitedBy, peakC }, f) => {
    const why = {
      heat: ', à cause de la chaleur',
      air: ', à cause de l’air',
      circuit: ', à cause du circuit',
      none: '',
    };
    return `${atOnce === 1 ? 'Un foyer' : 'Deux foyers'} à la fois${why[limitedBy]} : la pièce devrait atteindre environ ${f.measure(peakC, '°C')}. C’est un conseil ; rien ici ne dit que l’air est sûr.`;
  },
  'plan.notice.room-blocked': ({ says }, f) => says.map((one) => f.say(one)).join(' '),
  'plan.notice.room-hot': ({ says }, f) => says.map((one) => f.say(one)).join(' '),
  'plan.notice.air-not-told':
    'Personne n’a encore dit si la hotte souffle dehors ni si une fenêtre s’ouvre. Le plan ne compte sur aucune, et même un seul foyer est alors de trop. Indiquez les deux sous « Pièce et air ».',
  'plan.notice.room-tiny': ({ volumeM3, leastM3 }, f) =>
    `La cuisine est décrite avec ${f.shortMeasure(volumeM3, 'm³', 1)} ; chaleur et air ne sont calculés qu’à partir de ${f.measure(leastM3, 'm³', 0, 'up')}. Remesurez sol et plafond ; d’ici là, un foyer à la fois, et rien ne dit que la pièce le supporte.`,
  'plan.notice.much-water': ({ says }, f) =>
    `Beaucoup d’eau : ${f.list(says.map((one) => f.say(one)))}. Une fontaine à eau chaude pour remplir, une seconde bouilloire et une personne de plus raccourcissent beaucoup. Ou demandez si un plan de travail peut être couvert au lieu d’être ébouillanté.`,
  'plan.notice.much-water.fixture': ({ fixture, kettles, litres }, f) =>
    `${fixture}, ${f.number(kettles)} bouilloires (environ ${f.measure(litres, 'L')})`,
  'plan.notice.room-unknown':
    'Un foyer à la fois : telle que la pièce est décrite, sa chaleur ne peut être calculée. Vérifiez taille, hotte et fenêtre.',
  'plan.notice.room-too-much':
    'D’après le calcul, même un seul foyer rend la pièce trop chaude ou son air trop mauvais. Donnez une sortie à l’air, et attendez entre les foyers.',
  'plan.notice.no-air':
    'Ni hotte vers l’extérieur ni fenêtre : les brûleurs à gaz ne peuvent être cachérisés ici avant que l’air ait une sortie.',
  'plan.notice.hood-filters':
    'La hotte ne fait que filtrer : elle n’évacue aucun gaz. La fenêtre doit être ouverte.',
  'plan.notice.clean-not-purge.steam': ({ oven }) =>
    `${oven} : le nettoyage vapeur ne cachérise pas ; il est traité comme un four sans pyrolyse.`,
  'plan.notice.clean-not-purge.catalytic': ({ oven }) =>
    `${oven} : la catalyse ne cachérise pas ; il est traité comme un four sans pyrolyse.`,
  'plan.notice.induction': ({ cooktop }) =>
    `${cooktop} : l’induction ne rougit pas. Demandez comment la cachériser avant de fixer le jour.`,
  'plan.notice.by-hand': ({ fixture }) =>
    `${fixture} : la quantité d’eau n’est pas calculée ; prévu comme travail à la main.`,
  'plan.notice.unreached': ({ fixture, spots }, f) =>
    `${fixture} : hors de portée de bras d’où l’on peut se tenir, donc sans bouilloire prévue : ${spots.map((spot) => f.say(spot)).join(' ; ')}. Pouvez-vous vous tenir d’un autre côté ? Dites-le dans la cuisine. Sinon, demandez à votre rabbin que faire de cet endroit. Ne montez jamais sur un tabouret avec de l’eau bouillante.`,
  'plan.question.unreached': ({ spots }, f) =>
    `Que faire d’un endroit qu’aucun bras n’atteint avec une bouilloire : ${spots.map((spot) => f.say(spot)).join(' ; ')} ?`,
  'plan.question.unreached.why':
    'Le jet doit atteindre chaque endroit. D’un autre côté, il est peut-être à portée : dites-le alors dans la cuisine.',
  'plan.question.unreached.until-then': 'Aucune bouilloire n’y est prévue.',
  'plan.question.unreached.cover': 'Verser, puis couvrir.',
  'plan.question.unreached.enough': 'Ce qui est versé suffit.',
  'plan.notice.spot': ({ areaCm2, leftM, nearM }, f) =>
    `${f.measure(areaCm2, 'cm²')}, à ${f.tape(leftM)} de son bout gauche et ${f.tape(nearM)} de son bord proche`,
  'plan.notice.pots': ({ names }) =>
    `Ne sert pas à verser : ${names.join(', ')}. Ce qu’on y puise est dans un second récipient, et plein il est trop lourd à porter.`,
  'plan.notice.unused-vessels': ({ names }) =>
    `Non utilisé : ${names.join(', ')}. Pas de chauffe indiquée, trop faible pour bouillir ici, ou trop petit à côté des autres.`,
  'plan.notice.utensils-now':
    'Aucun ustensile n’est cachérisé pendant Pessah : rangez ce qui ne l’a pas été avant, et demandez.',
  'plan.notice.utensils-no-pot': ({ names }, f) =>
    `Trop grand pour toute marmite qui bout ici : ${f.list(names.map((name) => f.say(name)))}. Aucune étape ne le cachérise. Indiquez dans la cuisine une marmite plus grande et son foyer, ou rangez-le.`,
  'plan.notice.no-change':
    'Par coutume, un récipient ne passe pas de viande à lait ou l’inverse (Maguen Avraham 509:11) : demandez avant de le faire.',
  'plan.notice.passover-hour':
    'La cachérisation doit finir avant la cinquième heure de la veille de Pessah : prévoyez de finir un jour plus tôt.',
  'plan.notice.overnight': ({ step }, f) =>
    `Aucune journée de travail n’est assez longue, cela continue dans la nuit : ${f.say(step)}`,
  'plan.notice.purge-late': ({ certain, decidedBy, ...late }, f) =>
    `Selon ce plan, la cachérisation finit ${ends(late, f)}${f.number(late.lateH, 1)} h après l’échéance${certain ? ', et aucun autre ordre de travail ne la tiendrait' : ''}.${bottleneck(decidedBy, f)}`,
  'plan.notice.after-fourth-hour': ({ certain, decidedBy, ...late }, f) =>
    `Selon ce plan, la cachérisation finit ${ends(late, f)}${f.number(late.lateH, 1)} h trop tard, mais avant l’allumage${certain ? ' ; aucun autre ordre de travail ne tiendrait l’heure' : ''}. L’eau demande alors plus de soin : demandez d’abord.${bottleneck(decidedBy, f)}`,
  'plan.notice.after-candles': ({ certain, decidedBy, ...late }, f) =>
    `Selon ce plan, la cachérisation finit ${ends(late, f)}${f.number(late.lateH, 1)} h trop tard, après l’allumage, quand on ne cachérise plus rien${certain ? ' ; aucun autre ordre de travail ne la tiendrait' : ''}. Commencez plus tôt, ou choisissez quoi fermer : nettoyé, couvert et hors d’usage pendant Pessah.${bottleneck(decidedBy, f)}`,
  'plan.notice.plan-late': ({ certain, decidedBy, ...late }, f) =>
    `Ce plan finit ${ends(late, f)}${f.number(late.lateH, 1)} h après l’échéance${certain ? ', et aucun autre ordre de travail ne la tiendrait' : ''}.${bottleneck(decidedBy, f)}`,
  'plan.chain.step': ({ step, lengthS }, f) =>
    `${f.say(step).replace(/\.$/, '')} (${f.duration(lengthS)})`,
  'plan.chain.by-itself': ({ step, lengthS }, f) =>
    `${f.say(step).replace(/\.$/, '')} (${f.duration(lengthS)}, que des bras de plus ne raccourcissent pas)`,
  'plan.chain.closed': ({ lengthS }, f) =>
    `heures sans travail, nuit ou jour chômé (${f.duration(lengthS)})`,
  'plan.chain.work': 'autre travail',
  'plan.notice.days-unknown': ({ place, start }) => {
    const missing = [
      ...(place ? [] : ['où est la cuisine (latitude, longitude, fuseau horaire, Israël ou non)']),
      ...(start ? [] : ['quand vous commencez']),
    ].join(', et ');
    return `Chabbat et fêtes ne sont pas dans cet horaire, qui compte les heures depuis le début. Indiquez ${missing} : il les respectera. D’ici là, commencez de sorte qu’aucun travail n’y tombe.`;
  },
  'plan.notice.last-day': ({ step }, f) =>
    `Le dernier jour avant l’échéance, sans jour d’avance si le verrou ou le coupe-circuit lâche : ${f.say(step)} Commencez le travail plus tôt.`,
  'plan.notice.past-fourth-hour': ({ fourthWallMs, candlesWallMs, zone }, f) =>
    `La quatrième heure de la veille de Pessah a fini ${f.moment(fourthWallMs, zone)}. Jusqu’à l’allumage, ${f.moment(candlesWallMs, zone)}, l’eau cachérise encore, avec plus de soin : demandez d’abord. Ce qui n’est pas cachérisé d’ici là est nettoyé, fermé et hors d’usage pendant Pessah.`,
  'plan.notice.inside-passover':
    'C’est Pessah. Rien n’est cachérisé par l’eau avant la fin : le plan ferme ce qui serait ébouillanté. Le feu pendant les demi-fêtes : demandez à votre rabbin ; sinon, fermez cela aussi. Certains admettent l’eau pour ce qui a reposé 24 heures : demandez.',
  'plan.notice.eve-is-sabbath':
    'Cette année la veille de Pessah est un Chabbat : toute cachérisation finit le vendredi précédent. Le plan finit à la quatrième heure de ce jour, comme les autres années. Le hamets est encore permis ce vendredi : demandez à votre rabbin si l’on peut cachériser jusqu’à l’allumage sans plus de soin.',
  'plan.notice.no-sun-on-eve':
    'En ce lieu le soleil ne se lève ni ne se couche la veille de Pessah : ses heures ne sont pas calculées. Le plan finit un jour plus tôt. Demandez l’heure à votre rabbin.',
  'plan.notice.leaven-hour': ({ fourthWallMs, fifthWallMs, purgeWallMs, candlesWallMs, zone }, f) =>
    `La veille, le hamets se mange jusqu’à ${f.moment(fourthWallMs, zone)} (fin de la quatrième heure) et se brûle jusqu’à ${f.moment(fifthWallMs, zone)} (fin de la cinquième). L’eau cachérise avant la première : le plan finit au plus tard ${f.moment(purgeWallMs, zone)}. Après, jusqu’à l’allumage, ${f.moment(candlesWallMs, zone)}, demandez d’abord.`,
  'plan.notice.dim-days': ({ day, untilHour }, f) =>
    `En ce lieu et en cette saison, le soleil n’indique ni le début ni la fin de ${f.say(day)} (il ne se couche pas, ou la nuit n’est pas noire). Le plan exclut tout de l’allumage, ou de midi sans coucher du soleil, à ${f.number(untilHour)}:00 le lendemain matin. Demandez les heures à votre rabbin.`,
  'plan.notice.recheck': ({ what }) =>
    `Un petit plan après un événement (${what}) : il ne contient que ce qui est touché. Demandez d’abord s’il faut cachériser à nouveau ; d’ici là, aucun usage à chaud.`,
  'plan.notice.calibration': ({ told }, f) =>
    `D’après votre dernier chantier : ${told.map((one) => f.say(one)).join(' ; ')}. Cela règle quand regarder et la durée du travail ; repos, maintiens et limites ne changent pas.`,
  'plan.calibration.boil': ({ name, percent }, f) =>
    `ébullition, ${f.say(name)} : ${shareText(percent)}`,
  'plan.calibration.glow': ({ name, percent }, f) =>
    `rougir, ${f.say(name)} : ${shareText(percent)}`,
  'plan.calibration.heat-up': ({ name, percent }, f) =>
    `chauffer, ${f.say(name)} : ${shareText(percent)}`,
  'plan.calibration.cool': ({ name, percent }, f) =>
    `refroidir, ${f.say(name)} : ${shareText(percent)}`,
  'plan.calibration.flow': ({ flowLMin }, f) =>
    `votre versement est de ${f.measure(flowLMin, 'L', 1)} par minute`,
  'plan.calibration.reach': ({ percent }, f) =>
    `une bouilloire porte à ${f.number(percent)} % de la distance calculée`,
  'plan.question.recheck': ({ fixture }) => `Faut-il cachériser à nouveau : ${fixture} ?`,
  'plan.question.recheck.why': ({ what }) => `Après sa cachérisation, ceci a été signalé : ${what}`,
  'plan.question.recheck.until-then':
    'Rien de chaud avec. Le plan le laisse reposer et le cachérise à nouveau.',
  'plan.only-heats': 'Pas de doute sur lui : il ne fait que chauffer la bouilloire.',
};
