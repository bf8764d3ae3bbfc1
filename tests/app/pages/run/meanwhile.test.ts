import { describe, expect, it } from 'vitest';
import { meanwhileOf } from '../../../../src/app/pages/run/timers/meanwhile.ts';
import { simulateRun, type RunView } from '../../../../src/core/run/index.ts';
import { planOfDemo } from '../../../core/plan/support/plans.ts';
import { inEnglish } from '../../../support/english.ts';

/** What is told at the first moment that is as wanted, need by need. */
function toldWhen(is: (seen: RunView) => boolean): Readonly<Record<string, string>> {
  let found: RunView | undefined;
  simulateRun(planOfDemo('flat-coils'), {
    script: (seen) => {
      if (!found && is(seen)) found = seen;
      return [];
    },
  });
  if (!found) throw new Error('It never was so.');
  return Object.fromEntries(
    meanwhileOf(found).map(({ need, lines }) => [
      inEnglish.say(need),
      lines.map((line) => inEnglish.say(line)).join(' '),
    ]),
  );
}

const phaseOf = (seen: RunView, id: string) => seen.fixtures.find((one) => one.id === id)?.phase;

describe('what is done where meanwhile', () => {
  it('sends whoever wants something hot elsewhere while all that heats rests', () => {
    const told = toldWhen((seen) =>
      seen.fixtures.every(({ phase }) => phase !== 'to-clean' && phase !== 'purging'),
    );
    expect(Object.keys(told)).toEqual(['Eat', 'Wash', 'Boil and heat']);
    expect(told['Boil and heat']).toMatch(
      /^Nothing here may get hot: boil water and cook elsewhere/,
    );
    expect(told['Wash']).toMatch(/^Cold only, one hot use and its rest begins again: /);
  });

  it('says of what nobody has begun with that it is as before', () => {
    const told = toldWhen((seen) => seen.fixtures.every(({ phase }) => phase === 'to-clean'));
    expect(told['Wash']).toMatch(/^As before, until it is cleaned: /);
    expect(told['Boil and heat']).not.toMatch(/elsewhere/);
  });

  it('names a sink as purged only once it is', () => {
    const sink = planOfDemo('flat-coils').kitchen.fixtures.find(({ kind }) => kind === 'sink');
    if (!sink) throw new Error('The demo has no sink.');
    const isDone = (seen: RunView) => ['done', 'covered'].includes(phaseOf(seen, sink.id) ?? '');
    expect(toldWhen(isDone)['Wash']).toMatch(`Purged or covered: ${sink.name}`);
    expect(toldWhen((seen) => !isDone(seen))['Wash']).not.toMatch('Purged or covered');
  });
});
