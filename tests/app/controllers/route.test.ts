import { expect, it } from 'vitest';
import { formatRoute, languageAsked, parseRoute } from '../../../src/app/context/route.ts';

it('reads the four pages and what is open in them', () => {
  expect(parseRoute('#/plan/flat-coils')).toEqual({ page: 'plan', id: 'flat-coils' });
  expect(parseRoute('#/run')).toEqual({ page: 'run' });
  expect(parseRoute('')).toEqual({ page: 'kitchen' });
  expect(parseRoute('#/cellar/7')).toEqual({ page: 'kitchen' });
});

it('reads the language asked for, beside the page', () => {
  expect(languageAsked('#/run?language=en-XA')).toBe('en-XA');
  expect(languageAsked('#/run')).toBeUndefined();
  expect(parseRoute('#/plan/hall?language=en-XA')).toEqual({ page: 'plan', id: 'hall' });
});

it('comes back from the address bar as it went', () => {
  for (const id of ['a b/c', 'hall', '%'])
    expect(parseRoute(formatRoute({ page: 'record', id }))).toEqual({ page: 'record', id });
});

it('opens the page of an address that was cut off within a letter', () => {
  for (const cut of ['%', '%D7', 'a%2'])
    expect(parseRoute(`#/record/${cut}`)).toEqual({ page: 'record' });
});
