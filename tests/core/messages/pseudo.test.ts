import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asWritten, message, type Message } from '../../../src/core/messages/index.ts';
import { pseudoTranslator } from '../../../src/core/messages/pseudo/index.ts';
import { inEnglish } from '../../support/english.ts';

const pseudo = pseudoTranslator(inEnglish);
const UTC = 'UTC';

describe('the pseudo-locale', () => {
  it('leaves no plain letter in a text of the catalogue, and makes it about 40 % longer', () => {
    const plain = inEnglish.t('run.start.standing');
    const text = pseudo.t('run.start.standing');
    expect(text).not.toMatch(/[a-z]/i);
    expect(text.length / plain.length).toBeGreaterThan(1.25);
    expect(text.length / plain.length).toBeLessThan(1.55);
  });

  it('leaves what people wrote as they wrote it, however deep', () => {
    const said = message('run.timer.named', {
      name: asWritten('Kitchen sink'),
      label: message('run.picture.burner', { name: 'Front left' }),
    });
    expect(pseudo.say(said)).toContain('Kitchen sink');
    expect(pseudo.say(said)).toContain('Front left');
    expect(pseudo.say(said).replace('Kitchen sink', '').replace('Front left', '')).not.toMatch(
      /[a-z]/i,
    );
  });

  it('leaves them in lists too, and accents the word between', () => {
    const said = message('engine.resource.hands', {
      steps: [asWritten('Clean'), asWritten('Rinse')],
    });
    expect(pseudo.say(said)).toMatch(/“Clean” [^a-z]+ “Rinse”/);
  });

  it('accents the words of the formatter', () => {
    expect(pseudo.format.duration(720)).toBe('12 ɱííñ');
    expect(pseudo.t('run.days.in', { leftS: 720 })).toBe('ííñ 12 ɱííñ');
    expect(pseudo.format.day(0, UTC)).not.toMatch(/[a-z]/i);
  });

  it('can be given ids where a sentence needs them', () => {
    const when = message('common.when', { wallMs: 0, nowMs: 0, zone: UTC });
    expect(pseudo.say(when)).toBe('00:00');
  });

  it('never changes what a person wrote', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 20 }), (text) => {
        fc.pre(!/[\uE000\uE001]/u.test(text));
        const said: Message = asWritten(text);
        expect(pseudo.say(said)).toBe(text);
      }),
    );
  });

  it('leaves what is drawn a number', () => {
    expect(pseudo.format.figure(100, '°C')).toBe(100);
  });
});
