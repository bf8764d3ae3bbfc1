import type { Point } from '../../../../../core/geometry/index.ts';
import type { Kitchen } from '../../../../../core/kitchen/index.ts';
import { message } from '../../../../../core/messages/index.ts';
import { addCorner } from '../../../../../core/editing/index.ts';
import { nameOf, type Carry, type Guides } from './carry.ts';
import type { SurveyController } from '../../survey/controller/survey-controller.ts';
import {
  beginGesture,
  endGesture,
  moveGesture,
  type Contact,
  type Gesture,
  type Grip,
} from './gesture.ts';

/** What a finger works on. */
export type EditorContext = {
  readonly survey: SurveyController;
  readonly selected: () => string | undefined;
  readonly select: (id: string | undefined) => void;
  /** What a way of the finger does to what it holds. */
  readonly carry: Carry;
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

/** The way of the finger in metres, up being away from the viewer. */
function metres([dx, dy]: readonly [number, number], pxPerCm: number): Point {
  return [dx / pxPerCm / 100, -dy / pxPerCm / 100];
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
    if (grip.kind !== 'wall' && this.#context.selected() !== grip.id) {
      // The first touch only chooses: nothing moves that was not chosen before.
      this.#context.select(grip.id);
      this.#letGo();
      return;
    }
    const { survey, pxPerCm, carry, showGuides } = this.#context;
    const { next, guides, done } = carry(this.#base, grip, metres(byPx, pxPerCm()));
    const before = survey.kitchen();
    if (survey.change(next, done, this.#stroke) !== undefined) return;
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
    if (grip.kind === 'fixture' || grip.kind === 'opening') select(grip.id);
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
