export { isFactKind1, upgradeFact } from './fact.ts';
export type { Fact1 } from './fact-1.ts';
