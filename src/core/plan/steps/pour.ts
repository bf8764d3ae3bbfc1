import { citation } from '../../custom/index.ts';
import type { Fixture } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { addBands, mapBand, SECONDS_PER_MINUTE, type Band } from '../../units/index.ts';
import { HANDS, kettleDemand, vesselResource } from '../context/demands.ts';
import { boilBeside, pourDemand } from '../context/places.ts';
import { choiceOf, readyId, type PlanContext } from '../context/plan-context.ts';
import {
  estimateTimer,
  reminder,
  stage,
  stepDraft,
  type StepDraft,
} from '../context/step-draft.ts';
import { boilId, boilOverId, dryId, pourId } from '../context/step-ids.ts';
import { handworkS } from '../context/work-times.ts';
import type { Kettle, PouredFixture, PourEstimate } from '../estimates/index.ts';
import type { Need, Stage, Work } from '../model/index.ts';
import { kettlePours, repeated, type KettlePour, type KettlePours } from '../pours/index.ts';
import { dryStep } from './dry.ts';
import { pouredParts } from './parts.ts';
import type { KettleQueue } from './kettle-queue.ts';
import {
  aboutKettle,
  boilStage,
  burnerNeed,
  fillStage,
  kettlePicture,
  kettleSafe,
  vesselUnit,
} from './kettles.ts';

/** Below this people are told that it is boiling all the same, °C. */
export const LOW_BOIL_C = 97;

/** A place that was begun is poured to its end: no more than this comes between besides the next boil, s. A judgement. */
const BETWEEN_S = 15 * SECONDS_PER_MINUTE;

/** Cold water is asked for again after this, s: custom says at once. */
const COLD_REMIND_S = 60;

type Turn = {
  readonly context: PlanContext;
  readonly fixture: Fixture;
  readonly pour: KettlePour;
  readonly of: number;
  /** Why no lanes are drawn, where they are not, or not everywhere. */
  readonly notDrawn: readonly Message[];
  readonly kettle: Kettle;
  readonly pourS: Band;
  /** The pour of this fixture for which the same kettle was used before. */
  readonly lastWithKettle?: string;
};

function workOf({ pour, of, kettle }: Turn, litres: number): Work {
  const { kettle: number, round, rounds } = pour;
  const turn = rounds !== undefined && rounds > 1 && { round, rounds };
  return { on: 'kettle', kettle: number, of, vessel: vesselUnit(kettle), litres, ...turn };
}

/** The boil that is poured is the one just before the lift, not one that has waited. */
function againLines(againS: number | undefined): readonly Message[] {
  return againS === undefined ? [] : [message('steps.boil.again', { againS })];
}

function boilDraft(turn: Turn): StepDraft {
  const { context, fixture, pour, kettle, of } = turn;
  const { burner } = kettle;
  const boil = context.boils.get(kettle.id);
  const needs: Need[] = [
    { step: readyId(context, fixture.id) },
    ...(kettle.toBuy || kettle.purged ? [] : [{ step: boilOverId(kettle.id) }]),
    ...burnerNeed(context, kettle),
    ...(turn.lastWithKettle === undefined ? [] : [{ step: turn.lastWithKettle }]),
  ];
  const named = { kettle: pour.kettle, of, fixture: fixture.name, vessel: kettle.name };
  return stepDraft(
    {
      id: boilId(fixture.id, pour.kettle),
      kind: 'boil',
      phase: 'purge',
      work: workOf(turn, context.filledL),
      title: message('steps.boil.title', named),
      reason: message('steps.boil.reason'),
      stages: [
        fillStage(context, kettle, [message('steps.boil.fill-mark')]),
        boilStage(
          context,
          kettle,
          boilsHere(context),
          burner
            ? [message('steps.boil.burner-off', { burner: burner.name })]
            : againLines(boil?.againS),
        ),
      ],
      durationS: addBands(boil?.timeS ?? { low: 0, typical: 0, high: 0 }, handworkS('light')),
    },
    {
      fixture: fixture.id,
      sources: [citation('oc-451-5')],
      needs,
      demands: { ...kettleDemand(context, kettle), ...boilBeside(context, burner?.id) },
      makeSafe: kettleSafe(kettle),
      picture: kettlePicture(context, kettle),
    },
    { ...aboutKettle(context, kettle), fixture },
  );
}

/** Where water boils well below 100 °C people wait for more: it does not come. */
export function boilsHere({ boilingC }: PlanContext): Message {
  return boilingC < LOW_BOIL_C
    ? message('steps.boil.wait-low', { boilingC })
    : message('steps.boil.wait-here', { boilingC });
}

/** Water left on a place cools the stream; what has run into a sink cools its floor. */
function dryLines({ fixture }: Turn): readonly Message[] {
  return fixture.kind === 'sink'
    ? [message('steps.pour.drain-open'), message('steps.pour.wipe-floor')]
    : [message('steps.pour.dry-first')];
}

/** Where this kettle begins and ends in its picture: at its own mark, and where the next one has its. */
function bluePart({ kettle, picture }: KettlePour): readonly Message[] {
  if (picture?.kind !== 'lanes') return [];
  const isLast = picture.stretches.every((stretch) => stretch.kettle <= kettle);
  return [message(isLast ? 'steps.pour.line-to-end' : 'steps.pour.line', { kettle })];
}

/** Which way to pour: the parts of a sink by name, or lane by lane. */
function wayLines({ context, fixture, pour }: Turn): readonly Message[] {
  if (pour.parts.length > 0) return pour.parts;
  const sides = (pour.sides ?? []).map((side) => message(`steps.pour.side.${side}`));
  const stand = sides.length > 0 ? [message('steps.pour.stand', { sides })] : [];
  const line = bluePart(pour);
  const way =
    fixture.kind === 'counter' && fixture.backEdges.length > 0
      ? message(`steps.pour.way.${context.kitchen.household.laneDirection ?? 'back-to-front'}`)
      : message('steps.pour.way.far-to-near');
  return [...stand, ...(line.length > 0 ? line : [way])];
}

/** Which time over the whole of it this is, where it is poured more than once. */
function roundLine({ pour: { round = 1, rounds = 1 } }: Turn): readonly Message[] {
  return rounds > 1 ? [message('steps.pour.round', { round, rounds })] : [];
}

/** Parts that are poured over with the fixture, by its first kettle. */
function partLines({ context, fixture, pour }: Turn): readonly Message[] {
  return pour.kettle === 1 ? pouredParts(choiceOf(context, fixture.id)) : [];
}

function stoneLine({ context, fixture }: Turn): readonly Message[] {
  return choiceOf(context, fixture.id).method.stone ? [message('steps.pour.stone')] : [];
}

function pourStages(turn: Turn): readonly Stage[] {
  const { context, fixture, pour, of } = turn;
  const notes = choiceOf(context, fixture.id).notes;
  const named = { kettle: pour.kettle, of, fixture: fixture.name };
  return [
    stage('pour', message('steps.pour.pour', named), {
      detail: [
        ...roundLine(turn),
        ...dryLines(turn),
        ...wayLines(turn),
        ...partLines(turn),
        ...stoneLine(turn),
        ...turn.notDrawn,
        ...notes,
      ],
      say: message('steps.pour.say'),
      hazards: ['boiling-water'],
      resumption: 'ask',
      reviewAsk: message('steps.pour.ask'),
      timers: [estimateTimer('empty', turn.pourS.typical, message('steps.pour.expect'))],
    }),
    stage('cold', message('steps.pour.cold'), {
      detail: [
        message('steps.pour.cold-where'),
        ...(pour.kettle < of ? [message('steps.pour.swab')] : []),
      ],
      say: message('steps.pour.cold-say'),
      resumption: 'ask',
      reviewAsk: message('steps.pour.cold-ask'),
      timers: [reminder('cold', COLD_REMIND_S, message('steps.pour.cold-timer'))],
    }),
  ];
}

function pourDraft(turn: Turn): StepDraft {
  const { context, fixture, pour, kettle, of } = turn;
  const choice = choiceOf(context, fixture.id);
  const boil = context.boils.get(kettle.id);
  const waitS = boil?.waitS ?? 0;
  const before = {
    step: pour.kettle > 1 ? pourId(fixture.id, pour.kettle - 1) : dryId(fixture.id),
  };
  return stepDraft(
    {
      id: pourId(fixture.id, pour.kettle),
      kind: 'pour',
      phase: 'purge',
      work: workOf(turn, pour.litres),
      title: message('steps.pour.title', { kettle: pour.kettle, of, fixture: fixture.name }),
      reason: choice.method.reason,
      stages: pourStages(turn),
      durationS: addBands(addBands(handworkS('carry'), turn.pourS), handworkS('cold')),
    },
    {
      fixture: fixture.id,
      sources: [choice.method.source, citation(context.custom.coldSource)],
      needs: [{ step: boilId(fixture.id, pour.kettle), withinS: Math.floor(waitS) }, before],
      demands: { [HANDS]: 1, [vesselResource(kettle)]: 1, ...pourDemand(fixture) },
      makeSafe: message('steps.pour.safe'),
      ...(pour.picture && { picture: pour.picture }),
    },
    { ...aboutKettle(context, kettle), fixture },
    [],
    pour.kettle > 1
      ? [{ step: before.step, to: 'end', mostS: BETWEEN_S + (boil?.timeS.typical ?? 0) }]
      : [],
  );
}

function notDrawn({ refusal, unreached = [] }: KettlePours): readonly Message[] {
  const [largest] = unreached;
  return [
    ...(refusal === undefined
      ? []
      : [message('steps.pour.not-drawn', { why: message(`steps.pour.not-drawn.${refusal}`) })]),
    ...(largest ? [message('steps.pour.unreached')] : []),
  ];
}

type FixturePours = {
  readonly drafts: readonly StepDraft[];
  readonly kettles: number;
};

/** Boil and pour of every kettle of one fixture. */
export function pourSteps(
  context: PlanContext,
  fixture: PouredFixture,
  need: PourEstimate,
  queue: KettleQueue,
): FixturePours {
  const planned = kettlePours(context.kitchen, fixture, need, context.filledL);
  const pours = repeated(planned.pours, choiceOf(context, fixture.id).method.times ?? 1);
  const last = new Map<string, string>();
  const total = pours.reduce((sum, { litres }) => sum + litres, 0);
  const drafts = pours.flatMap((pour) => {
    const kettle = queue.next();
    const before = last.get(kettle.id);
    last.set(kettle.id, pourId(fixture.id, pour.kettle));
    const share = total > 0 ? pour.litres / total : 1 / pours.length;
    const turn: Turn = {
      context,
      fixture,
      pour,
      of: pours.length,
      notDrawn: notDrawn(planned),
      kettle,
      // Once over the whole takes as long as the estimate says, each time.
      pourS: mapBand(need.pourS, (s) => s * share * (pour.rounds ?? 1)),
      ...(before !== undefined && { lastWithKettle: before }),
    };
    return [boilDraft(turn), pourDraft(turn)];
  });
  return { drafts: [dryStep(context, fixture), ...drafts], kettles: pours.length };
}
