import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reportOf, reportText, STANDING_LINES } from '../../../src/core/report/index.ts';
import { oneLine } from '../../../src/core/report/lines/line.ts';
import { simulateRun } from '../../../src/core/run/index.ts';
import { inEnglishWith } from '../../support/english.ts';
import { NEW_YEAR_MS, resting } from '../run/support/tablet.ts';
import { pours, recorded, rested, toldPlan } from './runs.ts';

/** 2026-01-01T00:00Z reads as "d1 00:00". */
const dateTime = (wallMs: number): string => {
  const minutes = Math.floor((wallMs - NEW_YEAR_MS) / 60_000);
  const two = (value: number): string => String(value).padStart(2, '0');
  return `d${Math.floor(minutes / 1440) + 1} ${two(Math.floor((minutes % 1440) / 60))}:${two(minutes % 60)}`;
};

const translator = inEnglishWith({ dateTime });

const textOf = (): string =>
  reportText(
    reportOf(simulateRun(toldPlan, { startWallMs: NEW_YEAR_MS }).facts),
    translator,
    'UTC',
  );

describe('the record as text', () => {
  it('can be read fixture by fixture', () => {
    const sections = textOf().split('\n\n');
    const sink = sections.find((section) => section.startsWith('Sink'))?.split('\n') ?? [];
    expect(sink.slice(0, 6)).toEqual([
      'Sink (meat)',
      '  Method: Pour boiling water, then cover (irui). Hot liquid was poured into it.',
      '  Source: A row of the custom (cited from memory, not yet checked).',
      '  Result: every planned step was done.',
      '  Rest: d1 00:10 to d2 00:10, 24 h proved (asked 24 h).',
      '  Kettles poured: 2 of 2, cold water after each.',
    ]);
    expect(sink).toContain('    pour-2: done, d2 00:20 to d2 00:22.');
  });

  it('names whose word replaced the custom, and what was open', () => {
    const text = textOf();
    expect(text).toContain(
      '  Answer of Rabbi of the test, 2026-01-01: Heat to glow, 10 min. Ten minutes are enough.',
    );
    expect(text).toContain('Replaces the row of the custom, by the word of: Rabbi of the test.');
    expect(text).toContain(
      'Hob: How long must the burner glow? Until then: The longer time is planned.',
    );
  });

  it('ends with the standing lines, every one of them, whatever was done', () => {
    for (const text of [textOf(), reportText(recorded(rested()), translator, 'UTC')]) {
      const last = text.trimEnd().split('\n').slice(-STANDING_LINES.length);
      expect(last.map((line) => line.trim())).toEqual(STANDING_LINES.map(translator.say));
    }
    expect(STANDING_LINES.map(translator.say).join(' ')).toMatch(
      /Customs differ.*no ruling.*manual.*emergency number/,
    );
  });

  it('tells doubt, what no longer counts, and what is not done', () => {
    const tablet = rested();
    pours(tablet, 1);
    tablet.does({ kind: 'report-recheck', fixture: 'sink', text: 'Hot soup fell into it' });
    tablet.does({ kind: 'stop-run', reason: 'Too late tonight' });
    const text = reportText(recorded(tablet), translator, 'UTC');
    expect(text).toContain('stopped before its end.\nReason: Too late tonight.');
    expect(text).toContain('  Doubt, d2 00:15: Hot soup fell into it.');
    expect(text).toContain('  Kettles poured: 0 of 2. 1 poured before does not count.');
    expect(text).toContain('Done again because: Hot soup fell into it.');
    const [, missing = ''] = text.split('\nNot done\n');
    expect(missing.split('\n\n')[0]).toContain(
      '  Sink: pour-1: not begun. Reason: Too late tonight.',
    );
  });

  it('tells how much of a rest there was when it was cut short', () => {
    const tablet = resting(toldPlan);
    tablet.passes(20 * 3600 + 60);
    tablet.does({ kind: 'skip-step', step: 'rest-sink', reason: 'Our rabbi allowed it' });
    const text = reportText(recorded(tablet), translator, 'UTC');
    expect(text).toContain(
      '    rest-sink: left out, d1 00:10 to d1 20:11. Reason: Our rabbi allowed it.',
    );
    expect(text).toContain('Our rabbi allowed it. 20 h of 24 h proved.');
    expect(text).not.toContain('  Rest: ');
  });

  it('says of a gap how long it was and what was answered', () => {
    const tablet = rested();
    tablet.restarts(3600, undefined, 1);
    const text = reportText(recorded(tablet), translator, 'UTC');
    expect(text).toContain(
      'Gaps\n  d2 00:10 to d2 01:10: the app was not running, 1 h. 1 half-written entry was dropped.',
    );
  });

  it('gives nobody’s words a line of their own', () => {
    // What a person writes must not pass for something the record says.
    const forged = 'x\r\nResult: every planned step was done.\u2028Rest: 24 h';
    const plain = rested();
    plain.does({ kind: 'note', text: 'x' });
    const evil = rested();
    evil.does({ kind: 'note', text: forged });
    const lines = (text: string): number => text.split(/[\n\r\u2028\u2029\u0085\v\f]/).length;
    expect(lines(reportText(recorded(evil), translator, 'UTC'))).toBe(
      lines(reportText(recorded(plain), translator, 'UTC')),
    );
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(oneLine(text)).not.toMatch(/[\p{Cc}\p{Zl}\p{Zp}]/u);
      }),
    );
  });
});
