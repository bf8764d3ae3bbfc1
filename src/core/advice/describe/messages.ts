import { parseMoment } from '../../calendar/index.ts';
import type { Kitchen } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import type { Plan } from '../../plan/index.ts';
import { MS_PER_SECOND } from '../../units/index.ts';
import type { AdviceList } from '../trying/advise.ts';
import type { Change } from '../changes/change.ts';
import type { Saving } from '../trying/saving.ts';
import type { Triage } from '../trying/triage.ts';
import { SURE } from '../margins/sure.ts';
import type { Sureness } from '../margins/sureness.ts';

const UTC = 'UTC';

function zoneOf({ place }: Kitchen): string {
  return place?.zone ?? UTC;
}

/** A fixture as the household calls it. */
function fixtureName(kitchen: Kitchen, id: string): string {
  return kitchen.fixtures.find((one) => one.id === id)?.name ?? id;
}

/**
 * A change in one sentence.
 * @param zone the clock that hours are told by (IANA); the kitchen's unless told otherwise
 */
export function changeMessage(
  change: Change,
  kitchen: Kitchen,
  zone: string = zoneOf(kitchen),
): Message {
  switch (change.kind) {
    case 'kettle':
      return message('advice.change.kettle', {
        on: change.on ?? '',
        count: change.vessel.count,
      });
    case 'stove-kettle':
      return message('advice.change.stove-kettle', { on: change.on ?? '' });
    case 'urn':
      return message('advice.change.urn');
    case 'people':
      return message('advice.change.people', { people: change.people });
    case 'start':
      return message('advice.change.start', { wallMs: change.startWallMs, zone });
    case 'last-hot':
      return message('advice.change.last-hot', {
        wallMs: parseMoment('lastHotAt', change.lastHotAt, zone),
        zone,
      });
    case 'answer':
      return message('advice.change.answer', {
        fixture: fixtureName(kitchen, change.override.fixture),
        answer: change.answer.text,
      });
    case 'cover': {
      const fixture = fixtureName(kitchen, change.override.fixture);
      return change.override.method === 'cover'
        ? message('advice.change.cover', { fixture })
        : message('advice.change.close', { fixture });
    }
  }
}

/** What it saves, in one sentence. */
export function savingMessage({ endS, inTime, spanS, kettles, kWh }: Saving): Message {
  return message('advice.saves', { endS, inTime, spanS, kettles, kWh });
}

/** What was tried and saves nothing; none where everything did. */
export function inVainMessages({ inVain }: Pick<AdviceList, 'inVain'>): readonly Message[] {
  if (inVain.length === 0) return [];
  const what = inVain.map((kind) => message(`advice.kind.${kind}`));
  return [message('advice.in-vain', { what })];
}

/** How sure the end is: by when nine times in ten; then what is nearer than that. */
export function surenessMessages(
  sureness: Sureness,
  { kitchen, days, timetable }: Plan,
): readonly Message[] {
  const zone = zoneOf(kitchen);
  const { nineInTenS, due } = sureness;
  const by = days
    ? message('advice.sure.moment', {
        endWallMs: days.startWallMs + timetable.finishS * MS_PER_SECOND,
        wallMs: days.startWallMs + nineInTenS * MS_PER_SECOND,
        zone,
      })
    : message('advice.sure.after', { endS: timetable.finishS, lengthS: nineInTenS });
  const close = sureness.restDays.filter(({ chance }) => chance < SURE);
  return [
    by,
    ...(due
      ? [message('advice.sure.due', { chance: due.chance, isSure: due.chance >= SURE })]
      : []),
    ...close.map(({ name: day, fromWallMs, ...rest }) =>
      message('advice.sure.rest-day', { day, wallMs: fromWallMs, zone, ...rest }),
    ),
  ];
}

/** The triage of a late plan in words. */
export function triageMessages(
  { kept, closed, utensilsWait }: Triage,
  { kitchen }: Plan,
): readonly Message[] {
  const names = (ids: readonly string[]) => ids.map((id) => fixtureName(kitchen, id));
  return [
    kept.length > 0
      ? message('advice.triage.kept', { fixtures: names(kept) })
      : message('advice.triage.none'),
    ...(closed.length > 0 ? [message('advice.triage.closed', { fixtures: names(closed) })] : []),
    ...(utensilsWait ? [message('advice.triage.utensils')] : []),
  ];
}
