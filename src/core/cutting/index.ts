export { bestPurchase, purchaseFrom, type Purchase, type Stock } from './buying/stock.ts';
export type { Joins, Part, WantedPiece } from './buying/joins.ts';
export { planCuts, planRolls } from './rolls/plan-cuts.ts';
export * from './model/types.ts';
