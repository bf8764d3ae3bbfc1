import { citation, type Choice, type ChosenPart } from '../../custom/index.ts';
import type { Fixture, Oven, PartId } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { choiceOf, readyId, type PlanContext } from '../context/plan-context.ts';
import { needsRest } from '../context/purging.ts';
import { stage, stepDraft, type StepDraft } from '../context/step-draft.ts';
import { newPartsId } from '../context/step-ids.ts';
import { handworkS } from '../context/work-times.ts';
import type { Need } from '../model/index.ts';
import { partByHand } from './by-hand.ts';
import { lastOf } from './finish.ts';

/** What a part is called. */
export function partName(part: PartId): Message {
  return message(`steps.part.${part}`);
}

function partsOf({ method }: Choice): readonly ChosenPart[] {
  return method.parts ?? [];
}

function replaced(choice: Choice): readonly PartId[] {
  return partsOf(choice).flatMap(({ part, method }) => (method === 'replace' ? [part] : []));
}

/** Parts that stay, to be cleaned. */
export function partsKept(choice: Choice): readonly PartId[] {
  return partsOf(choice).flatMap(({ part, method }) => (method === 'replace' ? [] : [part]));
}

/** A line of cleaning for what does not come back. */
export function takenOut(choice: Choice): readonly Message[] {
  const parts = replaced(choice);
  const out = parts.filter((part) => !STAYS_IN_THE_HEAT.has(part)).map(partName);
  const stays = parts.filter((part) => STAYS_IN_THE_HEAT.has(part)).map(partName);
  return [
    ...(out.length > 0 ? [message('steps.parts.take-out', { parts: out })] : []),
    ...stays.map((part) => message('steps.parts.until-new', { part })),
  ];
}

/** A coil without the bowl under it tilts and heats its wires: the old one stays in until it has glowed. */
const STAYS_IN_THE_HEAT: ReadonlySet<PartId> = new Set(['drip-bowls']);

/** What of the fixture is poured over by its first kettle. */
export function pouredParts(choice: Choice): readonly Message[] {
  return partsOf(choice).flatMap(({ part, method, within }) =>
    within && method === 'pour' ? [message('steps.parts.pour-over', { part: partName(part) })] : [],
  );
}

/** Do the racks stay in while an oven is heated at its highest? */
export function racksLine(choice: Choice): Message {
  const racks = partsOf(choice).find(({ part }) => part === 'racks');
  return message(
    racks?.within === true || racks === undefined ? 'steps.oven.racks-in' : 'steps.oven.racks-out',
  );
}

/** Is this the oven whose cycle takes up what the household was told to put into one? */
function isHost(context: PlanContext, oven: Oven): boolean {
  const first = context.kitchen.fixtures.find(
    ({ kind, id }) => kind === 'oven' && choiceOf(context, id).method.method === 'self-clean',
  );
  return first?.id === oven.id;
}

function guestParts(context: PlanContext, oven: Oven) {
  if (!isHost(context, oven)) return [];
  return context.kitchen.fixtures.flatMap((fixture) =>
    partsOf(choiceOf(context, fixture.id))
      .filter(({ method, within }) => method === 'self-clean' && !within)
      .map(({ part }) => ({ fixture, part })),
  );
}

/** Grates and the like that go through the cycle of an oven, with what must be over before. */
export function inTheCycle(
  context: PlanContext,
  oven: Oven,
): { readonly lines: readonly Message[]; readonly needs: readonly Need[] } {
  const guests = guestParts(context, oven).filter(({ fixture }) => fixture.id !== oven.id);
  const steps = new Set(guests.map(({ fixture }) => readyId(context, fixture.id)));
  return {
    lines: guests.map(({ fixture, part }) =>
      message('steps.parts.into-cycle', { part: partName(part), fixture: fixture.name }),
    ),
    needs: [...steps].map((step) => ({ step })),
  };
}

/** Purged by itself, when neither its fixture nor a cycle does it. */
function byItself(context: PlanContext, { part, method, within }: ChosenPart): boolean {
  if (within || !needsRest(method)) return false;
  const host = context.kitchen.fixtures.some(
    ({ kind, id }) => kind === 'oven' && choiceOf(context, id).method.method === 'self-clean',
  );
  return part !== 'cooktop-surface' && !(method === 'self-clean' && host);
}

/** One step for each part of a fixture that is purged by itself. */
export function partSteps(context: PlanContext, fixture: Fixture): readonly StepDraft[] {
  return partsOf(choiceOf(context, fixture.id))
    .filter((part) => byItself(context, part))
    .map((part) => partByHand(context, fixture, part, partName(part.part)));
}

/** New parts go in when the fixture is purged and cold; what is only covered is covered then too. */
export function newPartsSteps(
  context: PlanContext,
  fixture: Fixture,
  drafts: readonly StepDraft[],
): readonly StepDraft[] {
  const choice = choiceOf(context, fixture.id);
  const fresh = replaced(choice).map(partName);
  const covered = partsOf(choice).flatMap(({ part, method }) =>
    method === 'cover' || method === 'line' ? [partName(part)] : [],
  );
  if (fresh.length === 0 && covered.length === 0) return [];
  const title = message(fresh.length > 0 ? 'steps.parts.title' : 'steps.parts.title-cover', {
    fixture: fixture.name,
  });
  return [
    stepDraft(
      {
        id: newPartsId(fixture.id),
        kind: 'cover',
        phase: 'cover',
        work: { on: 'fixture', method: fresh.length > 0 ? 'replace' : 'cover' },
        title,
        reason: message('steps.parts.reason'),
        stages: [
          stage('cover', title, {
            detail: [
              ...fresh.map((part) => message('steps.parts.new', { part })),
              ...covered.map((part) => message('steps.parts.cover', { part })),
              message('steps.parts.cold'),
            ],
            say: message('steps.parts.say'),
          }),
        ],
        durationS: handworkS('cover'),
      },
      {
        fixture: fixture.id,
        sources: [citation('trade-practice')],
        needs: lastOf(fixture, drafts).map((step) => ({ step })),
      },
      { fixture },
    ),
  ];
}
