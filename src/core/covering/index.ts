export { planCovers, type CoverOptions } from './buying/plan-covers.ts';
export { describeCovers } from './describe/describe-covers.ts';
export { rollDrawings, type RollDrawing } from './describe/drawing.ts';
export type * from './model/types.ts';
export { coverPieces } from './pieces/cover-pieces.ts';
