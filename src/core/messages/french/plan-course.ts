import type { planCourse as english } from '../english/plan-course.ts';
import type { TranslationOf } from '../model/translation.ts';
import type { Formatter } from '../model/message.ts';

const S_DAY = 86_400;
const S_HOUR = 3600;
const S_MINUTE = 60;

type Moment = { wallMs: number; zone: string };

/** "vendredi soir 17:33"; what is after midnight belongs to the day that began then. */
function when({ wallMs, zone }: Moment, f: Formatter): string {
  const clock = f.clock(wallMs, zone);
  const hour = Number(clock.slice(0, 2));
  const weekday = f.weekday(wallMs, zone);
  if (hour < 5) return `${weekday} ${clock} (nuit)`;
  const part = hour < 12 ? 'matin' : hour < 18 ? 'après-midi' : 'soir';
  return `${weekday} ${part} ${clock}`;
}

/** A second moment without its day where that is the same. */
function until(wallMs: number, { wallMs: fromWallMs, zone }: Moment, f: Formatter): string {
  const isSame = f.day(wallMs, zone) === f.day(fromWallMs, zone);
  return isSame ? f.clock(wallMs, zone) : when({ wallMs, zone }, f);
}

/** "51 h", "3 h 10 min", "12 jours": the longer, the rounder. */
function lengthText(lengthS: number, f: Formatter): string {
  const days = Math.floor(lengthS / S_DAY);
  if (days >= 4) return `${f.number(days)} jours`;
  return f.duration(lengthS - (lengthS % (lengthS < S_DAY ? S_MINUTE : S_HOUR)), 'down');
}

/** The course of a plan: its picture, its head, and the step that is pressed. */
export const planCourse: TranslationOf<typeof english> = {
  'plan-page.course.about':
    'Le cours du plan : qui fait quoi, ce qui repose, chauffe et refroidit. Les flèches vont de barre en barre, Entrée en ouvre une. La liste des étapes dit la même chose.',
  'plan-page.course.day': ({ wallMs, zone }, f) => f.day(wallMs, zone),
  'plan-page.course.weekday': ({ wallMs, zone }, f) => f.weekday(wallMs, zone),
  'plan-page.course.short-weekday': ({ wallMs, zone }, f) => f.shortWeekday(wallMs, zone),
  'plan-page.course.hour': ({ wallMs, zone }, f) => f.clock(wallMs, zone),
  'plan-page.course.part.morning': 'matin',
  'plan-page.course.part.afternoon': 'après-midi',
  'plan-page.course.part.evening': 'soir',
  'plan-page.course.part.night': 'nuit',
  'plan-page.course.does.prepare': 'préparation',
  'plan-page.course.does.clean': 'nettoyage',
  'plan-page.course.does.water': 'versement',
  'plan-page.course.does.heat': 'chauffe',
  'plan-page.course.does.finish': 'finition',
  'plan-page.course.until': (at, f) => `jusqu’à ${when(at, f)}`,
  'plan-page.course.until.weekday': ({ wallMs, zone }, f) =>
    `jusqu’à ${f.weekday(wallMs, zone)} ${f.clock(wallMs, zone)}`,
  'plan-page.course.until.short': ({ wallMs, zone }, f) => `jusqu’à ${f.shortMoment(wallMs, zone)}`,
  'plan-page.course.until.rest': (at, f) => `repos jusqu’à ${when(at, f)}`,
  'plan-page.course.until.thaw': (at, f) => `dégivre jusqu’à ${f.clock(at.wallMs, at.zone)}`,
  'plan-page.course.until.heat': (at, f) => `chaud jusqu’à ${f.clock(at.wallMs, at.zone)}`,
  'plan-page.course.until.cool': (at, f) => `refroidit jusqu’à ${f.clock(at.wallMs, at.zone)}`,
  'plan-page.course.until.water': ({ wallMs, fromWallMs, zone }, f) =>
    `eau ${f.clock(fromWallMs, zone)}–${f.clock(wallMs, zone)}`,
  'plan-page.course.bar': ({ who, what, more, toWallMs, ...from }, f) =>
    `${who === '' ? '' : `${who} : `}${f.say(what)}${more > 0 ? ` et ${f.number(more)} de plus` : ''}, de ${when(from, f)} à ${until(toWallMs, from, f)}`,
  'plan-page.course.steps': ({ many }, f) => `${f.number(many)} étapes d’un même travail`,
  'plan-page.course.at': ({ toWallMs, who, ...from }, f) =>
    `De ${when(from, f)} à ${until(toWallMs, from, f)}${who === '' ? '' : `, ${who}`}.`,
  'plan-page.course.slack': (at, f) => `Rien ne l’attend avant ${when(at, f)}.`,
  'plan-page.course.ends': (at, f) => `fin ${when(at, f)}`,
  'plan-page.course.ends-sure': ({ sureWallMs, ...at }, f) =>
    `fin ${when(at, f)} ; neuf fois sur dix avant ${until(sureWallMs, at, f)}`,
  'plan-page.course.due': (at, f) => `à finir avant ${when(at, f)}`,
  'plan-page.course.due-purged': (at, f) => `à cachériser avant ${when(at, f)}`,
  'plan-page.course.late': ({ lateS }, f) => `${lengthText(lateS, f)} trop tard`,
  'plan-page.course.key.hands': 'mains au travail',
  'plan-page.course.key.rest': 'repose',
  'plan-page.course.key.heat': 'chauffe',
  'plan-page.course.key.cool': 'refroidit',
  'plan-page.course.key.water': 'eau bouillante',
  'plan-page.course.key.thaw': 'dégivre',
  'plan-page.course.key.watch': 'surveille ce qui rougit',
  'plan-page.course.key.chain': 'décide de la fin',
  'plan-page.course.key.slack': 'peut durer plus',
  'plan-page.course.cut': ({ name, ...at }, f) => `${f.say(name)}, ${when(at, f)}`,
  'plan-page.course.gone': 'plus possible',
  'plan-page.course.key.due': 'l’heure limite',
  'plan-page.course.key.late': 'trop tard',
  'plan-page.course.key.night': 'Nuits et jours chômés sont dessinés plus étroits.',

  'plan-page.head.ends': ({ wallMs, zone, lengthS }, f) =>
    `Fin ${f.day(wallMs, zone)}, ${f.clock(wallMs, zone)} ; ${lengthText(lengthS, f)} depuis le début.`,
  'plan-page.head.in-time': ({ wallMs, zone, spareS, purge }, f) =>
    `À temps : fin ${f.day(wallMs, zone)}, ${f.clock(wallMs, zone)} ; ${purge ? 'cachérisé' : 'fini'} ${lengthText(spareS, f)} avant l’heure.`,
  'plan-page.head.late': ({ doneWallMs, dueWallMs, zone, lateS, purge }, f) =>
    `${lengthText(lateS, f)} trop tard : ${purge ? 'cachérisé' : 'fini'} ${f.day(doneWallMs, zone)}, ${f.clock(doneWallMs, zone)}. L’heure est ${f.day(dueWallMs, zone)}, ${f.clock(dueWallMs, zone)}.`,
  'plan-page.head.cut': ({ name, many, of, ...at }, f) =>
    `Trop tard pour ${f.number(many)} ${f.plural(many, { one: 'endroit', other: 'endroits' })} sur ${f.number(of)} : rien n’est plus cachérisé après ce moment : ${f.say(name)}, ${f.day(at.wallMs, at.zone)}, ${f.clock(at.wallMs, at.zone)}.`,
  'plan-page.head.close-up': ({ fixtures }, f) =>
    `Plus possible. Nettoyez, fermez et n’utilisez pas pendant Pessah : ${f.list(fixtures)}. Demandez d’abord.`,
  'plan-page.head.free': ({ spans, people, more }, f) =>
    `${people > 1 ? 'Tous sont libres' : 'Vous êtes libre'} ${f.list(spans.map((one) => f.say(one)))}${more ? ', et plus tard' : ''}.`,
  'plan-page.head.why': 'Pourquoi, et ce que cela veut dire',
  'plan-page.head.free.span': ({ toWallMs, ...from }, f) =>
    `de ${when(from, f)} à ${until(toWallMs, from, f)}`,
  'plan-page.head.never-free':
    'Il n’y a pas de longues heures libres entre la première étape et la dernière.',
};
