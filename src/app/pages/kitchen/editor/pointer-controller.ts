import type { Fixture, Kitchen, Point } from '../../../../core/kitchen/index.ts';
import {
  addCorner,
  moveCorner,
  moveFixture,
  snapCorner,
  snapMove,
} from '../../../../core/editing/index.ts';
import type { SurveyController } from '../survey/survey-controller.ts';
import {
  beginGesture,
  endGesture,
  moveGesture,
  type Contact,
  type Gesture,
  type Grip,
} from './gesture.ts';
import { fixtureOutline, lowerLeft, pullCorner } from './outline.ts';

export type Guides = readonly (readonly [Point, Point])[];

/** What the hand works on. */
export type EditorContext = {
  readonly survey: SurveyController;
  readonly selected: () => string | undefined;
  readonly select: (id: string | undefined) => void;
  /** Corners one by one: pulling one moves no other. */
  readonly shape: () => boolean;
  /** The view, to be pulled along by the floor. */
  readonly pan: (byM: Point, begun: boolean) => void;
  /** Screen pixels per centimetre of the kitchen. */
  readonly pxPerCm: () => number;
  readonly showGuides: (guides: Guides) => void;
};

function contactOf(event: PointerEvent): Contact {
  return {
    pointerId: event.pointerId,
    pointerType: event.pointerType,
    xPx: event.clientX,
    yPx: event.clientY,
    widthPx: event.width,
    heightPx: event.height,
    atMs: event.timeStamp,
  };
}

function nameOf(kitchen: Kitchen, id: string): string {
  return kitchen.fixtures.find((f: Fixture) => f.id === id)?.name ?? id;
}

/** The way of the finger in metres, up being away from the viewer. */
function metres([dx, dy]: readonly [number, number], pxPerCm: number): Point {
  return [dx / pxPerCm / 100, -dy / pxPerCm / 100];
}

/** Moves what is held from where it stood when the finger came down: nothing drifts. */
function carry(
  base: Kitchen,
  grip: Grip,
  byM: Point,
  shape: boolean,
): { next: Kitchen; guides: Guides } {
  if (grip.kind === 'fixture') {
    const outline = fixtureOutline(base, grip.id);
    if (!outline) return { next: base, guides: [] };
    const [x, y] = lowerLeft(outline);
    const { at, guides } = snapMove(base, grip.id, [x + byM[0], y + byM[1]]);
    return { next: moveFixture(base, grip.id, at), guides };
  }
  if (grip.kind === 'corner') {
    const corner = fixtureOutline(base, grip.id)?.[grip.corner];
    if (!corner) return { next: base, guides: [] };
    const to: Point = [corner[0] + byM[0], corner[1] + byM[1]];
    const { at, guides } = snapCorner(base, grip.id, grip.corner, to);
    const pull = shape ? moveCorner : pullCorner;
    return { next: pull(base, grip.id, grip.corner, at), guides };
  }
  return { next: base, guides: [] };
}

let strokes = 0;

/** Turns fingers on the drawing into changes; a stray one leaves no trace. */
export class PointerController {
  readonly #world: EditorContext;
  readonly #fingers = new Set<number>();
  #mostFingers = 0;
  #gesture: Gesture | undefined;
  #base: Kitchen | undefined;
  #changed = false;

  constructor(world: EditorContext) {
    this.#world = world;
  }

  down(event: PointerEvent, grip: Grip): void {
    if (event.pointerType === 'touch') {
      if (this.#fingers.size === 0) this.#mostFingers = 0;
      this.#fingers.add(event.pointerId);
      this.#mostFingers = Math.max(this.#mostFingers, this.#fingers.size);
    } else this.#mostFingers = 1;
    if (this.#gesture) {
      this.#takeBack();
      return;
    }
    if (event.button !== 0 || this.#mostFingers > 1) return;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    this.#gesture = beginGesture(contactOf(event), grip);
    this.#base = this.#world.survey.kitchen();
    strokes += 1;
  }

  move(event: PointerEvent): void {
    if (!this.#gesture || !this.#base) return;
    const wasDragging = this.#gesture.dragging;
    const { gesture, byPx } = moveGesture(this.#gesture, contactOf(event));
    this.#gesture = gesture;
    const { grip } = gesture;
    if (!byPx || grip.kind === 'edge') return;
    if (grip.kind === 'floor') {
      this.#world.pan(metres(byPx, this.#world.pxPerCm()), !wasDragging);
      return;
    }
    if (this.#world.selected() !== grip.id) {
      // The first touch only chooses: nothing moves that was not chosen before.
      this.#world.select(grip.id);
      this.#letGo();
      return;
    }
    const { survey, pxPerCm, shape, showGuides } = this.#world;
    const { next, guides } = carry(this.#base, grip, metres(byPx, pxPerCm()), shape());
    const label = `${nameOf(this.#base, grip.id)} ${grip.kind === 'fixture' ? 'moved' : 'resized'}`;
    const before = survey.kitchen();
    if (survey.change(next, label, `stroke-${strokes}`) !== undefined) return;
    this.#changed ||= survey.kitchen() !== before;
    showGuides(guides);
  }

  up(event: PointerEvent): void {
    const held = this.#gesture;
    this.#fingers.delete(event.pointerId);
    if (!held || held.from.pointerId !== event.pointerId) return;
    const ending = endGesture(held, contactOf(event), this.#mostFingers);
    if (ending === 'stray') this.#takeBack();
    else this.#letGo();
    if (ending === 'tap') this.#tap(held.grip);
  }

  cancel(event: PointerEvent): void {
    this.#fingers.delete(event.pointerId);
    this.#takeBack();
  }

  #letGo(): void {
    this.#gesture = undefined;
    this.#base = undefined;
    this.#changed = false;
    this.#world.showGuides([]);
  }

  #takeBack(): void {
    if (this.#changed) this.#world.survey.undo();
    this.#letGo();
  }

  #tap(grip: Grip): void {
    const { survey, select } = this.#world;
    if (grip.kind === 'fixture') select(grip.id);
    else if (grip.kind === 'floor') select(undefined);
    else if (grip.kind === 'edge') {
      const now = survey.kitchen();
      survey.change(addCorner(now, grip.id, grip.edge), `${nameOf(now, grip.id)}: corner added`);
    }
  }
}
