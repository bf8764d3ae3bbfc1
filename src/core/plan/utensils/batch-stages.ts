import { isGas } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import type { Batch } from '../../utensils/index.ts';
import type { PlanContext } from '../context/plan-context.ts';
import { estimateTimer, offReminder, reminder, stage } from '../context/step-draft.ts';
import type { PurgingPot } from '../context/utensil-context.ts';
import type { Hazard, Stage } from '../model/index.ts';
import { counted, pieces } from './clean-and-rest.ts';

/** Cold water is asked for again after this, s: custom says at once. */
const COLD_REMIND_S = 60;

export type BatchTurn = {
  readonly context: PlanContext;
  readonly pot: PurgingPot;
  readonly batch: Batch;
  /** The first and the last in their water. */
  readonly isFirst: boolean;
  readonly isLast: boolean;
};

function hazardsOf({ pot }: BatchTurn): readonly Hazard[] {
  const { burner } = pot.kettle;
  return ['boiling-water', burner && isGas(burner.type) ? 'flame' : 'element'];
}

/** Several pieces in tongs go in one after the other; else all that is in the batch goes in at once. */
function oneByOne({ hold, items }: Batch): boolean {
  return hold === 'tongs' && pieces(items) > 1;
}

function halves({ items }: Batch): boolean {
  return items.some(({ way }) => way === 'by-halves');
}

function howLines({ batch }: BatchTurn): readonly Message[] {
  if (halves(batch)) return [message('utensils.batch.halves', { dips: batch.dips })];
  if (batch.hold === 'net') return [message('utensils.batch.net')];
  return [message('utensils.batch.tongs', { dips: batch.dips })];
}

/** What goes in: each kind with its number. */
function whatLines({ batch }: BatchTurn): readonly Message[] {
  return counted(batch.items);
}

function topUp(turn: BatchTurn): readonly Stage[] {
  const { batch, isFirst } = turn;
  if (isFirst) return [];
  return [
    stage('boil', message('utensils.step.top-up', { litres: batch.fillL }), {
      detail: [message('utensils.rule.plain-water')],
      say: message('steps.boil.say'),
      hazards: hazardsOf(turn),
      resumption: 'ask',
      reviewAsk: message('utensils.step.boil-ask'),
      timers: [estimateTimer('boil', batch.recoverS.typical, message('steps.boil.expect'))],
    }),
  ];
}

function dip(turn: BatchTurn, id: string, title: Message, detail: readonly Message[]): Stage {
  return {
    ...stage('immerse', title, {
      detail,
      say: message('utensils.step.under'),
      hazards: hazardsOf(turn),
      resumption: 'ask',
      reviewAsk: message('utensils.step.under-ask'),
    }),
    id,
  };
}

/** With the things in it, until it boils again: the time by what they take from the water. */
function boilsAgain(turn: BatchTurn, id: string): Stage {
  const { mixedC, recoverS } = turn.batch;
  return {
    ...stage('boil', message('utensils.step.again'), {
      detail: [message('utensils.step.drop', { mixedC: mixedC.typical, recoverS })],
      say: message('utensils.step.again-say'),
      hazards: hazardsOf(turn),
      resumption: 'ask',
      reviewAsk: message('utensils.step.again-ask'),
      timers: [estimateTimer('boil', recoverS.typical, message('steps.boil.expect'))],
    }),
    id,
  };
}

/** Each under, until it boils again, turned or its other half, up and into cold water: then the next. */
function inTurn(turn: BatchTurn): readonly Stage[] {
  const { batch } = turn;
  const { recoverS, dips } = batch;
  return [
    {
      ...dip(turn, 'immerse', message('utensils.step.one-by-one'), [
        ...whatLines(turn),
        ...howLines(turn),
        message('utensils.step.drop', { mixedC: batch.mixedC.typical, recoverS }),
        message('utensils.step.each-cold'),
      ]),
      say: message('utensils.step.all-twice'),
      timers: [
        estimateTimer('dips', recoverS.typical * dips, message('utensils.step.dips-expect')),
      ],
    },
  ];
}

function atOnce(turn: BatchTurn): readonly Stage[] {
  const { batch } = turn;
  const first = [
    dip(turn, 'immerse', message('utensils.step.lower'), [...whatLines(turn), ...howLines(turn)]),
    boilsAgain(turn, 'again'),
  ];
  if (batch.hold === 'net') return first;
  const turned = message(halves(batch) ? 'utensils.step.other-half' : 'utensils.step.turn');
  return [...first, dip(turn, 'turn', turned, []), boilsAgain(turn, 'again-turned')];
}

function ends(turn: BatchTurn): readonly Stage[] {
  const { kettle } = turn.pot;
  const burner = kettle.burner?.name ?? '';
  const cold = stage('cold', message('utensils.step.cold'), {
    detail: turn.isLast ? [] : [message('utensils.step.next-batch', { burner })],
    say: message('steps.cold.say-rinsed'),
    hazards: hazardsOf(turn),
    resumption: 'ask',
    reviewAsk: message('steps.pour.cold-ask'),
    timers: [reminder('cold', COLD_REMIND_S, message('steps.pour.cold-timer'))],
  });
  if (!turn.isLast) return [cold];
  return [
    cold,
    stage('off', message('utensils.step.off', { burner }), {
      detail: [message('utensils.step.empty')],
      say: message('utensils.step.off-say'),
      hazards: hazardsOf(turn),
      resumption: 'ask',
      reviewAsk: message('steps.by-hand.off-ask'),
      timers: [offReminder(message('steps.by-hand.off-timer'))],
    }),
  ];
}

/** Under, boiling again, turned where tongs hold it, out and into cold water at once. */
export function batchStages(turn: BatchTurn): readonly Stage[] {
  const dips = oneByOne(turn.batch) ? inTurn(turn) : atOnce(turn);
  return [...topUp(turn), ...dips, ...ends(turn)];
}
