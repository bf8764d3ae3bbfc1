import { readFileSync } from 'node:fs';
import { createRoot, createSignal } from 'solid-js';
import { describe, expect, it } from 'vitest';
import { parseKitchen, type Kitchen } from '../../../../../src/core/kitchen/index.ts';
import { fixtureOf, outlineOf } from '../../../../../src/core/kitchen/index.ts';
import { message } from '../../../../../src/core/messages/index.ts';
import { moveFixture, newKitchen } from '../../../../../src/core/editing/index.ts';
import {
  frameOfView,
  outOfView,
  viewOfAll,
  zoomed,
} from '../../../../../src/app/pages/kitchen/editor/view/view.ts';
import { chapterOfPath } from '../../../../../src/app/pages/kitchen/survey/chapters.ts';
import { createSurveyController } from '../../../../../src/app/pages/kitchen/survey/controller/survey-controller.ts';
import type { KitchenController } from '../../../../../src/app/controllers/kitchen/kitchen-opening.ts';
import { inEnglish } from '../../../../support/english.ts';

function flat(): Kitchen {
  const outcome = parseKitchen(readFileSync('demo-kitchens/flat-coils.kitchen.json', 'utf8'));
  if ('problems' in outcome) throw new Error('The demo does not parse.');
  return outcome.kitchen;
}

const MOVED = message('survey.done.moved', { fixture: 'Table' });
const ALTITUDE = message('survey.done.altitude');

/** A controller that keeps a kitchen and nothing else. */
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
    const stroke = Symbol('stroke');
    for (const x of [1.3, 1.4, 1.5])
      survey.change(moveFixture(survey.kitchen(), 'table', [x, 0.3]), MOVED, stroke);
    survey.change({ ...survey.kitchen(), altitudeM: 100 }, ALTITUDE);
    expect(survey.undoLabel()).toBe(ALTITUDE);
    survey.undo();
    expect(survey.undoLabel()).toBe(MOVED);
    survey.undo();
    expect(survey.kitchen()).toEqual(flat());
    survey.redo();
    const table = fixtureOf(survey.kitchen(), 'table');
    expect(table && outlineOf(table)?.[0]).toEqual([1.5, 0.3]);
    dispose();
  });

  it('that would spoil the file are not taken, and it is said what is allowed', () => {
    const { survey, dispose } = surveyOf(flat());
    const why = survey.change({ ...survey.kitchen(), altitudeM: 90_000 }, ALTITUDE);
    expect(why && inEnglish.say(why)).toMatch(/Not taken: 90000\. Allowed: .*5000/);
    expect(survey.refusal()).toBe(why);
    expect(survey.kitchen()).toEqual(flat());
    expect(survey.undoLabel()).toBeUndefined();
    survey.change({ ...survey.kitchen(), altitudeM: 900 }, ALTITUDE);
    expect(survey.refusal()).toBeUndefined();
    dispose();
  });

  it('may begin with a kitchen that holds nothing yet', () => {
    const { survey, dispose } = surveyOf(newKitchen({ name: 'New', country: 'GB' }, inEnglish));
    expect(survey.change({ ...survey.kitchen(), altitudeM: 900 }, ALTITUDE)).toBeUndefined();
    expect(survey.kitchen().altitudeM).toBe(900);
    dispose();
  });

  it('are still there after a look at another page', () => {
    const [kitchen, setKitchen] = createSignal(flat());
    const edit = (next: Kitchen) => setKitchen(() => next);
    const kitchens = { kitchen, edit } as unknown as KitchenController;
    createRoot((dispose) => {
      createSurveyController(kitchens, kitchen()).change({ ...flat(), altitudeM: 900 }, ALTITUDE);
      dispose();
    });
    createRoot((dispose) => {
      const again = createSurveyController(kitchens, kitchen());
      expect(again.undoLabel()).toBe(ALTITUDE);
      again.undo();
      expect(kitchen()).toEqual(flat());
      dispose();
    });
  });

  it('made elsewhere are a step too', () => {
    const { survey, setKitchen, dispose } = surveyOf(flat());
    setKitchen({ ...flat(), altitudeM: 300 });
    survey.change({ ...survey.kitchen(), tapColdC: 9 }, message('survey.done.tap'));
    survey.undo();
    expect(survey.kitchen().altitudeM).toBe(300);
    survey.undo();
    expect(survey.kitchen()).toEqual(flat());
    dispose();
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

describe('a field that is asked for', () => {
  it('knows the page of each field', () => {
    expect(chapterOfPath('fixtures.sink.material')).toBe('fixtures');
    expect(chapterOfPath('vessels[0].circuit')).toBe('water');
    expect(chapterOfPath('room.hood.kind')).toBe('air');
    expect(chapterOfPath('household.custom')).toBe('people');
    expect(chapterOfPath('place')).toBe('where');
  });
});
