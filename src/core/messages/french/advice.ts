import type { advice as english } from '../english/advice.ts';
import type { TranslationOf } from '../model/translation.ts';
import type { Formatter } from '../model/message.ts';

type Saved = {
  readonly endS: number;
  readonly inTime: boolean;
  readonly spanS: number;
  readonly kettles: number;
  readonly kWh: number;
};

/** Less than this is no difference to a person, s. */
const S_MINUTE = 60;
/** Nearer to the plan than this is as planned, s. */
const AS_PLANNED_S = 300;
/** Energy is told where its first decimal shows, kWh. */
const LEAST_KWH = 0.05;

/** "presque toujours", "93 fois sur 100": never more sure than it is. */
function often(chance: number, f: Formatter): string {
  const percent = Math.floor(chance * 100);
  if (percent >= 99) return 'presque toujours';
  return percent < 1 ? 'presque jamais' : `${f.number(percent)} fois sur 100`;
}

/** To the minute: a saving is no measurement. */
function inMinutes(lengthS: number, f: Formatter): string {
  return f.duration(Math.round(lengthS / S_MINUTE) * S_MINUTE);
}

function kettlesText(kettles: number, f: Formatter): string {
  const many = Math.abs(kettles);
  const word = f.plural(many, { one: 'bouilloire', other: 'bouilloires' });
  return `${f.number(many)} ${word} en ${kettles > 0 ? 'moins' : 'plus'}`;
}

function savedText({ endS, inTime, spanS, kettles, kWh }: Saved, f: Formatter): string {
  const parts = [
    ...(inTime ? ['tient l’échéance'] : []),
    ...(endS >= S_MINUTE ? [`finit ${inMinutes(endS, f)} plus tôt`] : []),
    ...(endS < S_MINUTE && spanS >= S_MINUTE
      ? [`même fin, ${inMinutes(spanS, f)} plus court`]
      : []),
    ...(kettles === 0 ? [] : [kettlesText(kettles, f)]),
    ...(Math.abs(kWh) < LEAST_KWH
      ? []
      : [`${f.number(Math.abs(kWh), 1)} kWh en ${kWh > 0 ? 'moins' : 'plus'}`]),
  ];
  return parts.join(' ; ');
}

/** What would help a plan, and how sure its end is. */
export const advice: TranslationOf<typeof english> = {
  'advice.title': ({ kitchen }) => `Ce qui aiderait : ${kitchen}`,
  'advice.heading': 'Ce qui aiderait',
  'advice.about':
    'Chaque idée est replanifiée seule. Elles ne s’ajoutent pas : prenez-en une, puis regardez encore.',
  'advice.trying': ({ done, of }, f) => `Plan ${f.number(done)} sur ${f.number(of)} …`,
  'advice.stop': 'Arrêter',
  'advice.none': 'Rien de ce qui a été essayé n’améliore ce plan.',
  'advice.more': ({ many, triage }, f) =>
    `Encore ${f.number(many)}${triage ? ', et ce qui peut encore être fait à temps' : ''}`,
  'advice.take': 'Prendre',
  'advice.take.last-hot': 'C’est le cas',
  'advice.take.said': 'Dire qui a décidé',
  'advice.taken': ({ change }, f) => `Pris. ${f.say(change)}`,
  'advice.undo': 'Annuler',
  'advice.line': ({ change, saved }, f) => `${f.say(change)} ${f.say(saved)}`,
  'advice.saves': (saved, f) => `${f.capital(savedText(saved, f))}.`,

  'advice.vessel.kettle': 'Seconde bouilloire',
  'advice.vessel.stove-kettle': 'Bouilloire sur le feu',
  'advice.vessel.urn': 'Fontaine à eau chaude',
  'advice.change.kettle': ({ on, count }, f) =>
    `${count > 1 ? `${f.number(count)} bouilloires` : 'Une seconde bouilloire'}${on === '' ? '' : `, ${count > 1 ? 'branchées' : 'branchée'} sur : ${on}`}.`,
  'advice.change.stove-kettle': ({ on }) =>
    `Une bouilloire, ou une casserole qui verse, sur un foyer cachérisé d’ici là : ${on}.`,
  'advice.change.urn': 'Une fontaine à eau chaude.',
  'advice.change.people': ({ people }, f) => `Une personne de plus : ${f.number(people)} en tout.`,
  'advice.change.start': ({ wallMs, zone }, f) => `Commencer ${f.moment(wallMs, zone)}.`,
  'advice.change.last-hot': ({ wallMs, zone }, f) =>
    `Si rien ici n’a servi à chaud depuis ${f.moment(wallMs, zone)} : les repos comptent depuis ce moment.`,
  'advice.change.answer': ({ fixture, answer }, f) =>
    `${fixture}, si la réponse est : ${f.say(answer)}`,
  'advice.change.cover': ({ fixture }) => `${fixture} : couvert, non cachérisé. Demandez d’abord.`,
  'advice.change.close': ({ fixture }) => `${fixture} : fermé et inutilisé, non cachérisé.`,

  'advice.in-vain': ({ what }, f) =>
    `Essayé, et ne gagne rien : ${what.map((one) => f.say(one)).join(' ; ')}.`,
  'advice.kind.kettle': 'une seconde bouilloire',
  'advice.kind.stove-kettle': 'une bouilloire sur un foyer cachérisé',
  'advice.kind.urn':
    'une fontaine à eau chaude (ce qu’on y puise est dans un second récipient : elle ne verse pas)',
  'advice.kind.people': 'une personne de plus',
  'advice.kind.start': 'commencer à une autre heure',
  'advice.kind.last-hot': 'le dernier usage à chaud',
  'advice.kind.answer': 'une réponse à une question',
  'advice.kind.cover': 'couvrir au lieu de cachériser',

  'advice.decided': ({ links }, f) =>
    `Le plus long jusqu’à la fin : ${links.map((one) => f.say(one)).join(' ; ')}.`,

  'advice.outlook': ({ wallMs, zone, aheadS, about }, f) => {
    const end = `le travail finit ${about ? 'vers ' : ''}${f.moment(wallMs, zone)}.`;
    if (Math.abs(aheadS) < AS_PLANNED_S) return `Comme prévu, ${end}`;
    const by = inMinutes(Math.abs(aheadS), f);
    return `${by} ${aheadS > 0 ? 'd’avance' : 'de retard'} sur le plan ; ${end}`;
  },

  'advice.sure.heading': 'Fiabilité de la fin',
  'advice.sure.moment': ({ endWallMs, wallMs, zone }, f) =>
    `Fin prévue ${f.moment(endWallMs, zone)} ; neuf fois sur dix avant ${f.moment(wallMs, zone)}.`,
  'advice.sure.after': ({ endS, lengthS }, f) =>
    `Fin prévue après ${f.duration(endS)} ; neuf fois sur dix après ${f.duration(lengthS, 'up')} au plus.`,
  'advice.sure.due': ({ chance, isSure }, f) =>
    `${isSure ? 'L’échéance est tenue' : 'Juste : l’échéance est tenue'} ${often(chance, f)}.`,
  'advice.sure.rest-day': ({ day, wallMs, zone, chance, last, beginByWallMs }, f) =>
    `Juste : ce qui est prévu avant ${f.say(day)}, ${f.moment(wallMs, zone)}, est alors fait ${often(chance, f)}. La dernière étape d’avant : ${f.say(last).replace(/\.$/, '')} ; commencez-la au plus tard ${f.moment(beginByWallMs, zone)}, ou laissez-la pour après.`,
  'advice.sure.rests-on': ({ plays }, f) =>
    `D’après ${f.number(plays)} simulations de ce plan avec des mains lentes et rapides ; incidents et coupures n’y sont pas.`,

  'advice.triage.heading': 'Ce qui peut encore être fait à temps',
  'advice.triage.kept': ({ fixtures }) => `Dans cet ordre : ${fixtures.join(' ; ')}.`,
  'advice.triage.none': 'Rien qui soit cachérisé.',
  'advice.triage.utensils': 'Ustensiles : à ranger sous clé ; ils sont cachérisés une autre fois.',
  'advice.triage.closed': ({ fixtures }) =>
    `Couvert ou fermé jusqu’à ce qu’il y ait du temps : ${fixtures.join(' ; ')}. Demandez d’abord.`,
};
