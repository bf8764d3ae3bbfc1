export { FactUpgrader, isFactKind1 } from './fact.ts';
export type { Fact1 } from './fact-1.ts';
