import type { Step } from '../model/index.ts';

/** Do two steps hold some of the same: hands, a kettle, a circuit, the place of a fixture? */
export function shares(
  { demands: a }: Pick<Step, 'demands'>,
  { demands: b }: Pick<Step, 'demands'>,
): boolean {
  return Object.entries(a).some(([id, held]) => held > 0 && (b[id] ?? 0) > 0);
}
