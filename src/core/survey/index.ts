export { duplicateKitchen, newKitchen } from './new-kitchen.ts';
export { beginHistory, record, redo, undo, type History } from './history.ts';
export { offersOf, type Offer } from './offers.ts';
export { addFixture, type Edited } from './add.ts';
export { changeFixture, copyFixture, removeFixture } from './fixtures.ts';
export { moveFixture, resizeFixture, turnFixture } from './move.ts';
export { addCorner, moveCorner, removeCorner, toggleBackEdge } from './corners.ts';
export { counterRun, type RunPiece } from './run-along-walls.ts';
export { SNAP_M, snapCorner, snapMove, type Snapped } from './snap.ts';
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
} from './hardware.ts';
export { roomBox } from './room.ts';
export { untold, type Untold } from './untold.ts';
export { problemsOf } from './problems.ts';
export { placesLike, type Town } from './places.ts';
