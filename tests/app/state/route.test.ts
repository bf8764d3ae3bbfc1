import { expect, it } from 'vitest';
import { formatRoute, parseRoute } from '../../../src/app/state/route.ts';

it('reads the four places and what is open in them', () => {
  expect(parseRoute('#/plan/flat-coils')).toEqual({ place: 'plan', id: 'flat-coils' });
  expect(parseRoute('#/run')).toEqual({ place: 'run' });
  expect(parseRoute('')).toEqual({ place: 'kitchen' });
  expect(parseRoute('#/cellar/7')).toEqual({ place: 'kitchen' });
});

it('comes back from the address bar as it went', () => {
  for (const id of ['a b/c', 'hall', '%'])
    expect(parseRoute(formatRoute({ place: 'record', id }))).toEqual({ place: 'record', id });
});
