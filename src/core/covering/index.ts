export { planCovers } from './buying/plan-covers.ts';
export {
  cutMessage,
  describeCovers,
  pieceMessage,
  purchaseMessage,
} from './describe/describe-covers.ts';
export { rollDrawings, stretches, type RollDrawing, type Stretch } from './describe/drawing.ts';
export type * from './model/types.ts';
export { coverPieces } from './pieces/cover-pieces.ts';
