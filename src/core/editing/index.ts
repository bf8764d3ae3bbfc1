export { newKitchen } from './whole/new-kitchen.ts';
export { beginHistory, record, redo, undo, type History } from './whole/history.ts';
export { offerName, OFFERS, offerTells, type Offer } from './fixtures/offers.ts';
export { addFixture } from './fixtures/add.ts';
export { changeFixture, copyFixture, removeFixture } from './fixtures/fixtures.ts';
export { moveFixture, resizeFixture, turnFixture } from './shapes/move.ts';
export {
  addCorner,
  moveCorner,
  removeCorner,
  tellOpenSides,
  toggleBackEdge,
} from './shapes/corners.ts';
export { counterRun, type RunPiece } from './fixtures/run-along-walls.ts';
export { SNAP_M, snapCorner, snapMove } from './shapes/snap.ts';
export {
  addBurner,
  addCircuit,
  addVessel,
  changeBurner,
  changeCircuit,
  changeVessel,
  removeBurner,
  removeCircuit,
  removeVessel,
} from './fixtures/hardware.ts';
export { consumersOf, onBurner, onCircuit } from './fixtures/circuits.ts';
export { pullCorner, resizeAtWall } from './shapes/resize.ts';
export { roomBox, roomOutline } from './shapes/room.ts';
export { moveWall, wallAt } from './walls/walls.ts';
export {
  addOpening,
  changeOpening,
  moveOpening,
  openingOf,
  removeOpening,
  shiftOpening,
  turnOpening,
} from './walls/openings.ts';
export {
  canHang,
  hangFixture,
  moveAtWall,
  resizeAtWallFront,
  snapAtWall,
} from './walls/hanging.ts';
export {
  elevationOf,
  type Elevation,
  type FrontBox,
  type FrontOf,
  type OpeningFront,
} from './walls/elevation.ts';
export { addUtensil, removeUtensil } from './utensils/utensils.ts';
export { missingAnswers, type MissingAnswer } from './whole/missing-answers.ts';
export { factsToTell } from './whole/facts.ts';
export { problemsOf } from './whole/problems.ts';
export { NEW_WINDOW } from './tables/usual.ts';
export { placesLike, type Town } from './tables/places.ts';
