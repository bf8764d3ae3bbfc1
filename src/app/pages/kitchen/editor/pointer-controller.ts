import { lowerLeft, type Point, type Polygon } from '../../../../core/geometry/index.ts';
import { fixtureOf, outlineOf, type Kitchen } from '../../../../core/kitchen/index.ts';
import { message } from '../../../../core/messages/index.ts';
import {
  addCorner,
  moveCorner,
  moveFixture,
  pullCorner,
  snapCorner,
  snapMove,
} from '../../../../core/editing/index.ts';
import type { SurveyController } from '../survey/controller/survey-controller.ts';
import {
  beginGesture,
  endGesture,
  moveGesture,
  type Contact,
  type Gesture,
  type Grip,
} from './gesture.ts';

export type Guides = readonly (readonly [Point, Point])[];

/** What a finger works on. */
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
  return fixtureOf(kitchen, id)?.name ?? id;
}

/** The outline of a fixture by its id, where it is drawn. */
export function fixtureOutline(kitchen: Kitchen, id: string): Polygon | undefined {
  const fixture = fixtureOf(kitchen, id);
  return fixture && outlineOf(fixture);
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

/** Turns fingers on the drawing into changes; a stray one leaves no trace. */
export class PointerController {
  readonly #context: EditorContext;
  readonly #fingers = new Set<number>();
  #mostFingers = 0;
  #gesture: Gesture | undefined;
  #base: Kitchen | undefined;
  /** Changes under one finger are one step to undo. */
  #stroke = Symbol('stroke');
  #changed = false;

  constructor(context: EditorContext) {
    this.#context = context;
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
    this.#base = this.#context.survey.kitchen();
    this.#stroke = Symbol('stroke');
  }

  move(event: PointerEvent): void {
    if (!this.#gesture || !this.#base) return;
    const wasDragging = this.#gesture.dragging;
    const { gesture, byPx } = moveGesture(this.#gesture, contactOf(event));
    this.#gesture = gesture;
    const { grip } = gesture;
    if (!byPx || grip.kind === 'edge') return;
    if (grip.kind === 'floor') {
      this.#context.pan(metres(byPx, this.#context.pxPerCm()), !wasDragging);
      return;
    }
    if (this.#context.selected() !== grip.id) {
      // The first touch only chooses: nothing moves that was not chosen before.
      this.#context.select(grip.id);
      this.#letGo();
      return;
    }
    const { survey, pxPerCm, shape, showGuides } = this.#context;
    const { next, guides } = carry(this.#base, grip, metres(byPx, pxPerCm()), shape());
    const name = { fixture: nameOf(this.#base, grip.id) };
    const label =
      grip.kind === 'fixture'
        ? message('survey.done.moved', name)
        : message('survey.done.resized', name);
    const before = survey.kitchen();
    if (survey.change(next, label, this.#stroke) !== undefined) return;
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
    this.#context.showGuides([]);
  }

  #takeBack(): void {
    if (this.#changed) this.#context.survey.undo();
    this.#letGo();
  }

  #tap(grip: Grip): void {
    const { survey, select } = this.#context;
    if (grip.kind === 'fixture') select(grip.id);
    else if (grip.kind === 'floor') select(undefined);
    else if (grip.kind === 'edge') {
      const now = survey.kitchen();
      const what = message('survey.what.corner-added');
      survey.change(
        addCorner(now, grip.id, grip.edge),
        message('survey.done.told', { fixture: nameOf(now, grip.id), what }),
      );
    }
  }
}
