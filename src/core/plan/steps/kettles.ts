import { unkeyed } from '../../messages/temporary.ts';
import { citation } from '../../custom/index.ts';
import { addBands } from '../../units/index.ts';
import { kettleDemand } from '../context/demands.ts';
import {
  stepDraft,
  stage,
  type About,
  type StepDraft,
  type PlanContext,
} from '../context/step-draft.ts';
import { isGas, type Kettle } from '../estimates/index.ts';
import type { Hazard, Need, Stage } from '../model/types.ts';
import { handworkS } from '../context/work-times.ts';
import { cleanId, restId, restStep } from './clean.ts';
import { glowId } from './glow.ts';
import { lastPreparation } from './prepare.ts';

export function boilOverId(kettle: Kettle): string {
  return `boil-over-${kettle.id}`;
}

export function aboutKettle(site: PlanContext, kettle: Kettle): About {
  const fuel = kettle.burner && site.boils.get(kettle.id)?.fuel;
  return { vessel: kettle.vessel.kind, ...(fuel && { fuel }) };
}

/** A kettle on the stove stands on a burner that has been purged. */
export function burnerNeed(site: PlanContext, kettle: Kettle): readonly Need[] {
  const { burner } = kettle;
  const method = burner && site.burners.get(burner.id)?.method;
  return burner && (method === 'glow' || method === 'light-heat')
    ? [{ step: glowId(burner.id) }]
    : [];
}

/** What can hurt while it boils. */
function heatOf({ burner }: Kettle): readonly Hazard[] {
  if (!burner) return ['boiling-water'];
  return ['boiling-water', isGas(burner.type) ? 'flame' : 'element'];
}

/** What to do so that it boils. */
export function fillTitle(site: PlanContext, { name, burner }: Kettle): string {
  const heat = burner ? `turn the ${burner.name} burner on under it` : 'switch it on';
  return `Fill the ${lower(name)} to ${litres(site.filledL)} and ${heat}.`;
}

/** Which socket an electric kettle goes into; none for one on the stove. */
export function plugLines(site: PlanContext, { vessel, burner }: Kettle): readonly string[] {
  if (burner) return [];
  const circuit = site.kitchen.circuits.find(({ id }) => id === vessel.circuit);
  return [
    circuit
      ? `Plug it straight into ${circuit.name}; nothing runs there but what the plan runs.`
      : 'Plug it straight into a wall socket that nothing else uses.',
  ];
}

/** What makes it safe at any moment. */
export function kettleSafe({ name, burner }: Kettle): string {
  return burner
    ? `Turn the ${burner.name} burner off and leave the ${lower(name)} standing on it.`
    : `Switch the ${lower(name)} off and leave it where nobody can knock it.`;
}

/** Boiling, watched: the estimate is a look, the person says when it boils. */
export function boilStage(site: PlanContext, kettle: Kettle, title: string): Stage {
  const boil = site.boils.get(kettle.id);
  return stage('boil', title, {
    say: unkeyed('It boils'),
    hazards: heatOf(kettle),
    resumption: 'ask',
    reviewAsk: unkeyed('Did the kettle come to a rolling boil, and is the water still hot?'),
    timers: boil
      ? [
          {
            id: 'boil',
            role: 'estimate',
            purpose: 'at-least',
            lengthS: boil.timeS.typical,
            label: unkeyed('Boils about now'),
          },
        ]
      : [],
  });
}

/** Over the rim by hand: no kettle is filled past its mark. */
function overStage(kettle: Kettle): Stage {
  const off = kettle.burner ? `Turn the ${kettle.burner.name} burner off` : 'Unplug it';
  const never = kettle.burner ? 'the burner' : 'its base or plug';
  return stage('over', `${off}, then pour so that the water runs over the whole rim and spout.`, {
    detail: [unkeyed(`Over a clean basin, turning it slowly. Never let water run onto ${never}.`)],
    say: unkeyed('It ran over'),
    hazards: heatOf(kettle),
    resumption: 'ask',
    reviewAsk: unkeyed('Did the boiling water run over the whole rim?'),
  });
}

/** Clean, rest and boil-over of one kettle; none for a new one, or one that was purged. */
export function kettleSteps(site: PlanContext, kettle: Kettle): readonly StepDraft[] {
  const boil = site.boils.get(kettle.id);
  if (kettle.toBuy || kettle.purged || !boil) return [];
  const cleaning = `Clean and descale: ${kettle.name}.`;
  const title = `Purge the ${lower(kettle.name)} itself.`;
  const handling = addBands(handworkS('carry'), handworkS('cold'));
  return [
    stepDraft(
      {
        id: cleanId(kettle.id),
        kind: 'clean',
        phase: 'clean',
        title: unkeyed(cleaning),
        reason: unkeyed('Scale and grease would shield its walls.'),
        stages: [
          stage('clean', cleaning, {
            detail: [unkeyed('Rinse it well, lid and spout too.')],
            say: unkeyed('It is clean'),
          }),
        ],
        durationS: handworkS('kettle-clean'),
      },
      { sources: [citation('trade-practice')], needs: [{ step: lastPreparation(site) }] },
      { vessel: kettle.vessel.kind, rests: true },
    ),
    restStep(site, kettle.id, kettle.name),
    stepDraft(
      {
        id: boilOverId(kettle),
        kind: 'boil-over',
        phase: 'purge',
        title: unkeyed(title),
        reason: unkeyed(
          'What purges must itself be kosher: boiling water in it and over its rim purges it (hagalah).',
        ),
        stages: [
          stage('fill', fillTitle(site, kettle), {
            detail: plugLines(site, kettle).map(unkeyed),
            say: unkeyed('It is on'),
          }),
          boilStage(site, kettle, 'Wait for a rolling boil.'),
          overStage(kettle),
          stage('cold', 'Empty it and rinse it with cold water.', { say: unkeyed('Rinsed cold') }),
        ],
        durationS: addBands(boil.timeS, handling),
      },
      {
        sources: [citation(site.custom.kettleSource)],
        needs: [{ step: restId(kettle.id) }, ...burnerNeed(site, kettle)],
        demands: { hands: 1, ...kettleDemand(site, kettle) },
        makeSafe: unkeyed(kettleSafe(kettle)),
        picture: pictureOf(site, kettle),
      },
      aboutKettle(site, kettle),
    ),
  ];
}

export function pictureOf(site: PlanContext, kettle: Kettle) {
  return {
    kind: 'kettle',
    vessel: kettle.vessel.id,
    litres: site.filledL,
    maxFillL: kettle.vessel.maxFillL,
  } as const;
}

export function lower(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

export function litres(value: number): string {
  return `${Number(value.toFixed(1))} L`;
}
