import { citation } from '../../custom/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { addBands, mapBand, SECONDS_PER_MINUTE, type Band } from '../../units/index.ts';
import type { Batch } from '../../utensils/index.ts';
import { HANDS, kettleDemand } from '../context/demands.ts';
import { boilBeside } from '../context/places.ts';
import { stepDraft, type StepDraft, type Tie } from '../context/step-draft.ts';
import {
  batchId,
  boilOverAgainId,
  boilOverId,
  restId,
  utensilBoilId,
} from '../context/step-ids.ts';
import type { PurgingPot } from '../context/utensil-context.ts';
import { handworkS } from '../context/work-times.ts';
import { UTENSILS, type Picture } from '../model/index.ts';
import {
  aboutKettle,
  boilOverStep,
  boilStage,
  burnerNeed,
  fillStage,
  kettlePicture,
  kettleSafe,
  kettleSteps,
  vesselUnit,
} from '../steps/kettles.ts';
import { boilsHere } from '../steps/pour.ts';
import { batchStages } from './batch-stages.ts';
import type { UtensilWork } from './utensil-work.ts';

/** A pot that boils is not left: past this the water is boiled anew, s. A judgement. */
const WAITS_S = 30 * SECONDS_PER_MINUTE;
/** One batch follows the other in the timetable within this, s: the burner stays on. */
const NEXT_S = 5 * SECONDS_PER_MINUTE;

/** Batches that share their water. */
type Water = {
  /** From 1. */
  readonly number: number;
  readonly first: Batch;
  readonly batches: readonly Batch[];
};

function waters(batches: readonly Batch[]): readonly Water[] {
  const firsts = batches.filter(({ freshWater }, at) => freshWater || at === 0);
  return firsts.map((first, at) => {
    const next = firsts[at + 1];
    const to = next ? batches.indexOf(next) : batches.length;
    return { number: at + 1, first, batches: batches.slice(batches.indexOf(first), to) };
  });
}

/** From the first thing in to the last one rinsed, s. */
function batchS({ items, dips, recoverS }: Batch): Band {
  const pieces = items.reduce((sum, { count }) => sum + count, 0);
  const handled = mapBand(handworkS('dip'), (s) => s * pieces);
  const boiled = mapBand(recoverS, (s) => s * dips);
  return addBands(addBands(handled, boiled), handworkS('cold'));
}

function batchPicture({ utensils, context }: UtensilWork, batch: Batch): Picture | undefined {
  const { pot } = utensils.plan;
  if (!pot) return undefined;
  const kinds = new Map((context.kitchen.utensils ?? []).map(({ id, kind }) => [id, kind]));
  return {
    kind: 'batch',
    vessel: pot.vessel,
    diameterM: pot.diameterM,
    depthM: pot.depthM,
    waterShare: batch.fillL / pot.volumeL,
    hold: batch.hold,
    byHalves: batch.items.some(({ way }) => way === 'by-halves'),
    items: batch.items.map(({ utensil, name, count }) => ({
      kind: kinds.get(utensil) ?? 'gadget',
      name,
      count,
    })),
  };
}

function groupOf({ group }: Batch): Message {
  return message(`common.designation.${group}`);
}

function boilDraft(
  { context, sinkReady }: UtensilWork,
  { kettle, boil }: PurgingPot,
  { number, first }: Water,
  purged: string,
): StepDraft {
  const title = message('utensils.step.boil', { vessel: kettle.name, group: groupOf(first) });
  return stepDraft(
    {
      id: utensilBoilId(number),
      kind: 'boil',
      phase: 'purge',
      work: { on: 'vessel', vessel: vesselUnit(kettle), litres: first.fillL },
      title,
      reason: message('utensils.rule.bubbling'),
      stages: [
        fillStage(context, kettle, [message('utensils.rule.plain-water')], first.fillL),
        {
          ...boilStage(context, kettle, boilsHere(context), [message('utensils.step.lid')]),
          reviewAsk: message('utensils.step.boil-ask'),
        },
      ],
      durationS: addBands(boil.timeS, handworkS('light')),
    },
    {
      sources: [citation('oc-452-1')],
      needs: [...new Set([restId(UTENSILS), ...potReady(kettle.id), purged, ...sinkReady])]
        .map((step) => ({ step }))
        .concat(burnerNeed(context, kettle)),
      demands: { ...kettleDemand(context, kettle), ...boilBeside(context, kettle.burner?.id) },
      makeSafe: kettleSafe(kettle),
      picture: kettlePicture(context, kettle),
    },
    aboutKettle(context, kettle),
  );
}

/**
 * Named by every step that uses the pot: if it is doubted, its rest and its first purge begin
 * again, and nothing goes on in it before they are over.
 */
function potReady(pot: string): readonly string[] {
  return [restId(pot), boilOverId(pot)];
}

type Turn = {
  readonly work: UtensilWork;
  readonly pot: PurgingPot;
  readonly batch: Batch;
  readonly of: number;
  /** Its water, or the batch before it in the same. */
  readonly after: string;
  readonly water: number;
  readonly isFirst: boolean;
  readonly isLast: boolean;
};

function batchDraft({ work, pot, batch, of, after, water, isFirst, isLast }: Turn): StepDraft {
  const { context, utensils } = work;
  const { kettle } = pot;
  const durationS = batchS(batch);
  const choices = new Map(utensils.plan.choices.map((one) => [one.utensil, one]));
  const [first] = batch.items;
  const chosen = first && choices.get(first.utensil);
  const picture = batchPicture(work, batch);
  const near: readonly Tie[] = [{ step: after, to: 'end', mostS: NEXT_S }];
  return stepDraft(
    {
      id: batchId(batch.number),
      kind: 'boil-over',
      phase: 'purge',
      work: {
        on: 'utensils',
        items: batch.items.map(({ utensil, name, count }) => ({ utensil, name, count })),
        method: 'immerse',
        vessel: vesselUnit(kettle),
        batch: { number: batch.number, of, group: batch.group },
      },
      title: message('utensils.step.batch', { number: batch.number, of, group: groupOf(batch) }),
      reason: chosen?.reason ?? message('utensils.rule.bubbling'),
      stages: batchStages({ context, pot, batch, isFirst, isLast }),
      durationS,
    },
    {
      sources: [...(chosen ? [chosen.source] : []), citation(context.custom.coldSource)],
      needs: [
        { step: after, ...(isFirst && { withinS: Math.ceil(WAITS_S + durationS.high) }) },
        ...(isFirst ? [] : [{ step: utensilBoilId(water) }]),
        ...potReady(kettle.id).map((step) => ({ step })),
      ],
      demands: {
        [HANDS]: 1,
        ...kettleDemand(context, kettle),
        ...boilBeside(context, kettle.burner?.id),
      },
      makeSafe: kettleSafe(kettle),
      ...(picture && { picture }),
    },
    aboutKettle(context, kettle),
    [],
    near,
  );
}

/**
 * The pot purged, its water boiled, what goes in batch by batch; for each group of things the pot
 * again and fresh water; and the pot once more after the last batch.
 */
export function batchSteps(work: UtensilWork): readonly StepDraft[] {
  const { context, utensils, pot } = work;
  const { batches } = utensils.plan;
  if (!pot || batches.length === 0) return [];
  const { kettle } = pot;
  const drafts: StepDraft[] = [...kettleSteps(context, kettle)];
  let purged = boilOverId(kettle.id);
  let last = purged;
  for (const water of waters(batches)) {
    if (water.number > 1) {
      purged = boilOverAgainId(kettle.id, water.number);
      drafts.push(boilOverStep(context, kettle, purged, [...potReady(kettle.id), last]));
    }
    drafts.push(boilDraft(work, pot, water, purged));
    last = utensilBoilId(water.number);
    for (const [at, batch] of water.batches.entries()) {
      const isLast = at === water.batches.length - 1;
      drafts.push(
        batchDraft({
          work,
          pot,
          batch,
          of: batches.length,
          after: last,
          water: water.number,
          isFirst: at === 0,
          isLast,
        }),
      );
      last = batchId(batch.number);
    }
  }
  const after = boilOverAgainId(kettle.id, waters(batches).length + 1);
  return [...drafts, boilOverStep(context, kettle, after, [...potReady(kettle.id), last])];
}
