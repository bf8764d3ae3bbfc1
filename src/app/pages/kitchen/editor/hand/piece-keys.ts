import { lowerLeft, sizeOf } from '../../../../../core/geometry/index.ts';
import { wallOf, type Kitchen } from '../../../../../core/kitchen/index.ts';
import {
  moveAtWall,
  moveFixture,
  openingOf,
  removeFixture,
  removeOpening,
  resizeAtWall,
  resizeAtWallFront,
  roomOutline,
  shiftOpening,
  turnFixture,
  turnOpening,
} from '../../../../../core/editing/index.ts';
import { message, type Message } from '../../../../../core/messages/index.ts';
import type { SurveyController } from '../../survey/controller/survey-controller.ts';
import { fixtureOutline, frontOf, nameOf } from './carry.ts';
import { edgeOf, type Face } from './faces.ts';
import { actionOfKey, type KeyAction } from './keys.ts';

type Change = { readonly next: Kitchen; readonly done: Message };

/** A door or window goes along its wall whichever arrow leads that way; every arrow out widens it. */
function changeOpening(kitchen: Kitchen, id: string, action: KeyAction): Kitchen {
  const opening = openingOf(kitchen, id);
  const wall = opening && wallOf(roomOutline(kitchen), opening.wall);
  if (!wall) return kitchen;
  if (action.do === 'move')
    return shiftOpening(kitchen, id, action.dxM * wall.along[0] + action.dyM * wall.along[1]);
  if (action.do === 'resize') return shiftOpening(kitchen, id, 0, action.widerM + action.deeperM);
  return action.do === 'turn' ? turnOpening(kitchen, id) : kitchen;
}

function changeAbove(kitchen: Kitchen, id: string, action: KeyAction): Kitchen {
  if (openingOf(kitchen, id)) return changeOpening(kitchen, id, action);
  const outline = fixtureOutline(kitchen, id);
  if (!outline) return kitchen;
  if (action.do === 'turn') return turnFixture(kitchen, id);
  if (action.do === 'move') {
    const [x, y] = lowerLeft(outline);
    return moveFixture(kitchen, id, [x + action.dxM, y + action.dyM]);
  }
  if (action.do !== 'resize') return kitchen;
  const { lengthM, depthM } = sizeOf(outline);
  const [wideM, deepM] = [lengthM + action.widerM, depthM + action.deeperM];
  return wideM > 0 && deepM > 0 ? resizeAtWall(kitchen, id, wideM, deepM) : kitchen;
}

function changeFront(kitchen: Kitchen, id: string, wall: number, action: KeyAction): Kitchen {
  const edge = edgeOf(roomOutline(kitchen), wall);
  const box = frontOf(kitchen, edge, id);
  if (!box) return kitchen;
  if (action.do === 'move') return moveAtWall(kitchen, id, edge, [action.dxM, action.dyM]);
  if (action.do === 'turn') return turnOpening(kitchen, id);
  if (action.do !== 'resize') return kitchen;
  const { atM, widthM, fromM, toM } = box;
  return resizeAtWallFront(kitchen, id, {
    atM,
    widthM: widthM + action.widerM,
    fromM,
    toM: toM + action.deeperM,
  });
}

function changeBy(kitchen: Kitchen, id: string, face: Face, action: KeyAction): Change {
  const fixture = nameOf(kitchen, id);
  if (action.do === 'remove') {
    const next = openingOf(kitchen, id) ? removeOpening(kitchen, id) : removeFixture(kitchen, id);
    return { next, done: message('survey.done.taken-out', { name: fixture }) };
  }
  const done =
    action.do === 'move'
      ? message('survey.done.moved', { fixture })
      : action.do === 'turn'
        ? message('survey.done.turned', { fixture })
        : message('survey.done.resized', { fixture });
  const next =
    face === 'above' ? changeAbove(kitchen, id, action) : changeFront(kitchen, id, face, action);
  return { next, done };
}

/** What a key does to the fixture or opening that has the focus. */
export function onPieceKey(
  event: KeyboardEvent,
  id: string,
  o: {
    readonly survey: SurveyController;
    readonly face: Face;
    readonly onSelect: (id: string | undefined) => void;
    readonly onOpen: () => void;
  },
): void {
  const action = actionOfKey({
    key: event.key,
    shift: event.shiftKey,
    ctrl: event.ctrlKey || event.metaKey,
  });
  if (!action) return;
  event.preventDefault();
  if (action.do === 'leave') {
    o.onSelect(undefined);
    return;
  }
  if (action.do === 'open') {
    o.onOpen();
    return;
  }
  const row = (event.currentTarget as Element).nextElementSibling;
  const { next, done } = changeBy(o.survey.kitchen(), id, o.face, action);
  // A key that is held or pressed again goes on with the same step of undo.
  const step =
    action.do === 'move' || action.do === 'resize' ? `keys-${action.do}-${id}` : undefined;
  if (o.survey.change(next, done, step) || action.do !== 'remove') return;
  o.onSelect(undefined);
  if (row instanceof SVGElement && row.tabIndex === 0) row.focus();
}
