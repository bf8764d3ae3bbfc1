import type { Formatter } from '../model/message.ts';
import type { TranslationOf } from '../model/translation.ts';
import type { advice as english } from '../english/advice.ts';

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

/** "casi siempre", "93 de cada 100 veces": never more sure than it is. */
function often(chance: number, f: Formatter): string {
  const percent = Math.floor(chance * 100);
  if (percent >= 99) return 'casi siempre';
  return percent < 1 ? 'casi nunca' : `${f.number(percent)} de cada 100 veces`;
}

/** To the minute: a saving is no measurement. */
function inMinutes(lengthS: number, f: Formatter): string {
  return f.duration(Math.round(lengthS / S_MINUTE) * S_MINUTE);
}

function kettlesText(kettles: number, f: Formatter): string {
  const many = Math.abs(kettles);
  const word = f.plural(many, { one: 'hervidor', other: 'hervidores' });
  return `${f.number(many)} ${word} ${kettles > 0 ? 'menos' : 'más'}`;
}

function savedText({ endS, inTime, spanS, kettles, kWh }: Saved, f: Formatter): string {
  const parts = [
    ...(inTime ? ['cumple el plazo'] : []),
    ...(endS >= S_MINUTE ? [`termina ${inMinutes(endS, f)} antes`] : []),
    ...(endS < S_MINUTE && spanS >= S_MINUTE
      ? [`el mismo final, ${inMinutes(spanS, f)} más corto`]
      : []),
    ...(kettles === 0 ? [] : [kettlesText(kettles, f)]),
    ...(Math.abs(kWh) < LEAST_KWH
      ? []
      : [`${f.number(Math.abs(kWh), 1)} kWh ${kWh > 0 ? 'menos' : 'más'}`]),
  ];
  return parts.join('; ');
}

/** What would help a plan, and how sure its end is. */
export const advice: TranslationOf<typeof english> = {
  'advice.title': ({ kitchen }) => `Qué ayudaría: ${kitchen}`,
  'advice.heading': 'Qué ayudaría',
  'advice.about':
    'Cada uno se planifica de nuevo con ese único cambio. No se suman: tome uno y mire otra vez.',
  'advice.trying': ({ done, of }, f) => `Plan ${f.number(done)} de ${f.number(of)}…`,
  'advice.stop': 'Parar',
  'advice.none': 'Nada de lo probado mejora este plan.',
  'advice.more': ({ many, triage }, f) =>
    `${f.number(many)} más${triage ? ', y qué se puede hacer todavía a tiempo' : ''}`,
  'advice.take': 'Tomarlo',
  'advice.take.last-hot': 'Así es',
  'advice.take.said': 'Decir quién lo decidió',
  'advice.taken': ({ change }, f) => `Tomado. ${f.say(change)}`,
  'advice.undo': 'Deshacer',
  'advice.line': ({ change, saved }, f) => `${f.say(change)} ${f.say(saved)}`,
  'advice.saves': (saved, f) => `${f.capital(savedText(saved, f))}.`,

  'advice.vessel.kettle': 'Segundo hervidor',
  'advice.vessel.stove-kettle': 'Hervidor de fogón',
  'advice.vessel.urn': 'Termo de agua',
  'advice.change.kettle': ({ on, count }, f) =>
    `${count > 1 ? `${f.number(count)} hervidores` : 'Un segundo hervidor'}${on === '' ? '' : `, en: ${on}`}.`,
  'advice.change.stove-kettle': ({ on }) =>
    `Un hervidor, o un cazo que vierta, en un quemador ya kasherizado para entonces: ${on}.`,
  'advice.change.urn': 'Un termo de agua.',
  'advice.change.people': ({ people }, f) => `Una persona más: ${f.number(people)} en total.`,
  'advice.change.start': ({ wallMs, zone }, f) => `Empezar el ${f.moment(wallMs, zone)}.`,
  'advice.change.last-hot': ({ wallMs, zone }, f) =>
    `Si aquí no se usó nada en caliente desde el ${f.moment(wallMs, zone)}: los reposos cuentan desde entonces.`,
  'advice.change.answer': ({ fixture, answer }, f) =>
    `${fixture}, si la respuesta es: ${f.say(answer)}`,
  'advice.change.cover': ({ fixture }) => `${fixture}: cubrir, sin kasherizar. Pregunte antes.`,
  'advice.change.close': ({ fixture }) => `${fixture}: cerrar y no usar, sin kasherizar.`,

  'advice.in-vain': ({ what }, f) =>
    `Probado, y no ahorra nada: ${what.map((one) => f.say(one)).join('; ')}.`,
  'advice.kind.kettle': 'un segundo hervidor',
  'advice.kind.stove-kettle': 'un hervidor en un quemador kasherizado',
  'advice.kind.urn':
    'un termo de agua (lo que se saca de él está en un segundo recipiente, así que no sirve para verter)',
  'advice.kind.people': 'una persona más',
  'advice.kind.start': 'empezar a otra hora',
  'advice.kind.last-hot': 'el último uso en caliente',
  'advice.kind.answer': 'una respuesta a una pregunta',
  'advice.kind.cover': 'cubrir en lugar de kasherizar',

  'advice.decided': ({ links }, f) =>
    `Lo más largo en el camino al final: ${links.map((one) => f.say(one)).join('; ')}.`,

  'advice.outlook': ({ wallMs, zone, aheadS, about }, f) => {
    const end = `el trabajo termina ${about ? 'más o menos ' : ''}el ${f.moment(wallMs, zone)}.`;
    if (Math.abs(aheadS) < AS_PLANNED_S) return `Según el plan, ${end}`;
    const by = inMinutes(Math.abs(aheadS), f);
    return `Lleva ${by} de ${aheadS > 0 ? 'adelanto' : 'retraso'} sobre el plan; ${end}`;
  },

  'advice.sure.heading': 'Cuánta seguridad hay en el final',
  'advice.sure.moment': ({ endWallMs, wallMs, zone }, f) =>
    `Final planificado: ${f.moment(endWallMs, zone)}; nueve de cada diez veces, como tarde el ${f.moment(wallMs, zone)}.`,
  'advice.sure.after': ({ endS, lengthS }, f) =>
    `Final planificado en ${f.duration(endS)}; nueve de cada diez veces, en ${f.duration(lengthS, 'up')} como mucho.`,
  'advice.sure.due': ({ chance, isSure }, f) =>
    `${isSure ? 'Cumple' : 'Muy justo: cumple'} el plazo ${often(chance, f)}.`,
  'advice.sure.rest-day': ({ day, wallMs, zone, chance, last, beginByWallMs }, f) =>
    `Muy justo: lo planificado antes de ${f.say(day)}, ${f.moment(wallMs, zone)}, está hecho para entonces ${often(chance, f)}. Lo último antes: ${f.say(last).replace(/\.$/, '')}; empiécelo como tarde el ${f.moment(beginByWallMs, zone)}, o déjelo para después.`,
  'advice.sure.rests-on': ({ plays }, f) =>
    `Según ${f.number(plays)} repeticiones de este plan con manos lentas y rápidas; no incluye fallos ni descansos.`,

  'advice.triage.heading': 'Qué se puede hacer todavía a tiempo',
  'advice.triage.kept': ({ fixtures }) => `En este orden: ${fixtures.join('; ')}.`,
  'advice.triage.none': 'Nada que se kasherice.',
  'advice.triage.utensils': 'Utensilios: guárdelos bajo llave; se kasherizan en otra ocasión.',
  'advice.triage.closed': ({ fixtures }) =>
    `Cubierto o cerrado hasta que haya tiempo: ${fixtures.join('; ')}. Pregunte antes.`,
};
