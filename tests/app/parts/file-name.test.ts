import { describe, expect, it } from 'vitest';
import { fileName } from '../../../src/app/parts/file-name.ts';

const NOON = new Date(2027, 2, 1, 12).getTime();

describe('the name of a saved file', () => {
  it('is the kitchen and the day', () => {
    expect(fileName({ called: 'Grandma’s flat', atWallMs: NOON, ending: '.ics' })).toBe(
      'grandma-s-flat-2027-03-01.ics',
    );
  });

  it('keeps letters of every script', () => {
    expect(fileName({ called: 'המטבח של סבתא', atWallMs: NOON, ending: '.txt' })).toBe(
      'המטבח-של-סבתא-2027-03-01.txt',
    );
  });

  it('is that of the app where a kitchen has none', () => {
    for (const called of [undefined, '', ' / ', '..'])
      expect(fileName({ called, atWallMs: NOON, ending: '.run.json' })).toBe(
        'glowpour-2027-03-01.run.json',
      );
  });

  it('has no sign that turns it round or leads out of its folder', () => {
    const name = fileName({
      called: '\u202Egpj.exe/../<b>:"|?*\\',
      atWallMs: NOON,
      ending: '.txt',
    });
    expect(name).toBe('gpj-exe-b-2027-03-01.txt');
  });
});
