export { planCovers } from './buying/plan-covers.ts';
export { describeCovers } from './describe/describe-covers.ts';
export { rollDrawings } from './describe/drawing.ts';
export type * from './model/types.ts';
export { coverPieces } from './pieces/cover-pieces.ts';
