import type { AmendmentOne, RequestOne, SeenOne } from './layout.ts';

/** What amends a plan when a kettle ran out half-way, in the version that plays. */
export type RanOut = (
  step: string,
  hasBegun: (step: string) => boolean,
) => AmendmentOne | undefined;

type Seen = SeenOne['steps'][number];

const begun = ({ status }: Seen): boolean =>
  ['active', 'checking', 'settled', 'unwinding'].includes(status);

/**
 * A person to whom things happen: a pause, a kettle that runs out early, a
 * power cut, a doubt about what was done, a step left out, a note. Each once,
 * at the first look at which it can be; the same in both versions.
 */
export function disturbance(ranOut: RanOut): (seen: SeenOne) => readonly RequestOne[] {
  const told = new Set<string>();
  const once = (what: string, asked: readonly RequestOne[]): readonly RequestOne[] => {
    if (told.has(what)) return [];
    told.add(what);
    return asked;
  };
  return (seen) => {
    const find = (kind: string, status: string): Seen | undefined =>
      seen.steps.find((one) => one.step.kind === kind && one.status === status);
    if (seen.status === 'held') return once('resume', [{ kind: 'resume' }]);
    if (seen.status !== 'running') return [];
    if (find('clean', 'active') && !told.has('pause'))
      return once('pause', [{ kind: 'note', text: 'Tea.' }, { kind: 'pause' }]);
    const pour = find('pour', 'active');
    if (pour) {
      const amendment = told.has('ran out')
        ? undefined
        : ranOut(pour.step.id, (id) => seen.steps.some((one) => one.step.id === id && begun(one)));
      if (amendment) return once('ran out', [{ kind: 'amend-plan', ...amendment }]);
      if (!told.has('power'))
        return once('power', [{ kind: 'report-fault', fault: 'power-cut', step: pour.step.id }]);
    }
    const poured = find('pour', 'settled')?.step.fixture;
    if (poured !== undefined && find('boil', 'ready') && !told.has('doubt'))
      return once('doubt', [{ kind: 'report-doubt', fixture: poured, text: 'A cup was washed.' }]);
    const cover = find('cover', 'ready');
    if (cover)
      return once('skip', [{ kind: 'skip-step', step: cover.step.id, reason: 'No cover here.' }]);
    return [];
  };
}
