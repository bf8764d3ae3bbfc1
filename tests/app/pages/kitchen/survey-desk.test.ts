import { readFileSync } from 'node:fs';
import { createRoot, createSignal } from 'solid-js';
import { describe, expect, it } from 'vitest';
import { parseKitchen, type Kitchen } from '../../../../src/core/kitchen/index.ts';
import { moveFixture, newKitchen } from '../../../../src/core/editing/index.ts';
import {
  fixtureOutline,
  isUpright,
  pullCorner,
} from '../../../../src/app/pages/kitchen/editor/outline.ts';
import {
  frameOfView,
  outOfView,
  viewOfAll,
  zoomed,
} from '../../../../src/app/pages/kitchen/editor/view.ts';
import { chapterOfPath } from '../../../../src/app/pages/kitchen/survey/chapters.ts';
import { onCircuit, thingsOf } from '../../../../src/app/pages/kitchen/survey/fields/circuits.ts';
import { resizedAtWall } from '../../../../src/app/pages/kitchen/survey/fields/resize.ts';
import { createSurveyController } from '../../../../src/app/pages/kitchen/survey/survey-controller.ts';
import type { KitchenController } from '../../../../src/app/controllers/kitchen/kitchen-opening.ts';

function flat(): Kitchen {
  const outcome = parseKitchen(readFileSync('demo-kitchens/flat-coils.kitchen.json', 'utf8'));
  if ('problems' in outcome) throw new Error('The demo does not parse.');
  return outcome.kitchen;
}

/** A desk that keeps a kitchen and nothing else. */
function surveyOf(first: Kitchen) {
  const [kitchen, setKitchen] = createSignal(first);
  const edit = (next: Kitchen) => {
    setKitchen(next);
    return next;
  };
  return createRoot((dispose) => ({
    survey: createSurveyController({ kitchen, edit } as unknown as KitchenController, first),
    setKitchen,
    dispose,
  }));
}

describe('changes in the survey', () => {
  it('are undone and redone, one stroke being one step', () => {
    const { survey, dispose } = surveyOf(flat());
    for (const x of [1.3, 1.4, 1.5])
      survey.change(moveFixture(survey.kitchen(), 'table', [x, 0.3]), 'Table moved', 'stroke-1');
    survey.change({ ...survey.kitchen(), altitudeM: 100 }, 'Altitude changed');
    expect(survey.undoLabel()).toBe('Altitude changed');
    survey.undo();
    expect(survey.undoLabel()).toBe('Table moved');
    survey.undo();
    expect(survey.kitchen()).toEqual(flat());
    survey.redo();
    expect(fixtureOutline(survey.kitchen(), 'table')?.[0]).toEqual([1.5, 0.3]);
    dispose();
  });

  it('that would spoil the file are not taken, and it is said what is allowed', () => {
    const { survey, dispose } = surveyOf(flat());
    const why = survey.change({ ...survey.kitchen(), altitudeM: 90_000 }, 'Altitude changed');
    expect(why).toMatch(/Not taken: 90000\. Allowed: .*5000/);
    expect(survey.refusal()).toBe(why);
    expect(survey.kitchen()).toEqual(flat());
    expect(survey.undoLabel()).toBeUndefined();
    survey.change({ ...survey.kitchen(), altitudeM: 900 }, 'Altitude changed');
    expect(survey.refusal()).toBeUndefined();
    dispose();
  });

  it('may begin with a kitchen that holds nothing yet', () => {
    const { survey, dispose } = surveyOf(newKitchen({ name: 'New', country: 'GB' }));
    expect(survey.change({ ...survey.kitchen(), altitudeM: 900 }, 'Altitude')).toBeUndefined();
    expect(survey.kitchen().altitudeM).toBe(900);
    dispose();
  });

  it('made elsewhere are a step too', () => {
    const { survey, setKitchen, dispose } = surveyOf(flat());
    setKitchen({ ...flat(), altitudeM: 300 });
    survey.change({ ...survey.kitchen(), tapColdC: 9 }, 'Tap water changed');
    survey.undo();
    expect(survey.kitchen().altitudeM).toBe(300);
    survey.undo();
    expect(survey.kitchen()).toEqual(flat());
    dispose();
  });
});

describe('sizes', () => {
  it('pulled by a corner leave the corner across where it is', () => {
    const pulled = pullCorner(flat(), 'table', 2, [2.6, 1.25]);
    expect(fixtureOutline(pulled, 'table')).toEqual([
      [1.2, 0.3],
      [2.6, 0.3],
      [2.6, 1.25],
      [1.2, 1.25],
    ]);
    const back = pullCorner(flat(), 'table', 0, [1, 0.2]);
    expect(fixtureOutline(back, 'table')?.[2]).toEqual([2.4, 1.05]);
  });
  it('never turn inside out', () => {
    const outline = fixtureOutline(pullCorner(flat(), 'table', 2, [0, 0]), 'table');
    expect(outline && isUpright(outline)).toBe(true);
  });
  it('typed at a wall grow into the room', () => {
    const outline = fixtureOutline(
      resizedAtWall(flat(), 'counter-left', 0.72, 0.7),
      'counter-left',
    );
    expect(Math.max(...(outline ?? []).map((p) => p[1]))).toBeCloseTo(2.4, 6);
    expect(Math.min(...(outline ?? []).map((p) => p[1]))).toBeCloseTo(1.7, 6);
  });
});

describe('the view', () => {
  it('holds everything, and its drawing is in centimetres with up away from the viewer', () => {
    const view = viewOfAll(flat());
    expect(outOfView(view, flat())).toBe(false);
    const { at } = frameOfView(view);
    expect(at([view.xM, view.yM + view.heightM])).toEqual([0, 0]);
    expect(at([1, 0])[1]).toBeGreaterThan(at([1, 1])[1]);
    expect(at([2, 0])[0] - at([1, 0])[0]).toBeCloseTo(100, 9);
  });
  it('goes nearer about a point and keeps its shape', () => {
    const view = viewOfAll(flat());
    const near = zoomed(view, 2, [1, 1]);
    expect(near.widthM / near.heightM).toBeCloseTo(view.widthM / view.heightM, 9);
    expect(near.xM + near.widthM / 2).toBeCloseTo(1, 9);
    expect(outOfView(near, flat())).toBe(true);
  });
});

describe('finding and wiring', () => {
  it('knows the page of each field', () => {
    expect(chapterOfPath('fixtures.sink.material')).toBe('fixtures');
    expect(chapterOfPath('vessels[0].circuit')).toBe('water');
    expect(chapterOfPath('room.hood.kind')).toBe('air');
    expect(chapterOfPath('household.custom')).toBe('people');
    expect(chapterOfPath('place')).toBe('where');
  });
  it('puts a thing with all its burners on one breaker, or on none', () => {
    const told = onCircuit(flat(), { kind: 'fixture', id: 'range-top' }, 'sockets-left');
    const range = told.fixtures.find((f) => f.id === 'range-top');
    expect(range?.kind === 'cooktop' && range.burners.map((b) => b.circuit)).toEqual(
      Array.from({ length: 4 }, () => 'sockets-left'),
    );
    const off = onCircuit(flat(), { kind: 'vessel', id: 'kettle' }, undefined);
    expect(thingsOf(off).find((t) => t.id === 'kettle')?.circuit).toBe('');
    expect(off.vessels[0] && 'circuit' in off.vessels[0]).toBe(false);
  });
});
