import { describe, expect, it } from 'vitest';
import { LANGUAGES } from '../../../src/core/messages/languages/index.ts';
import type { Message } from '../../../src/core/messages/index.ts';
import { buildPlan } from '../../../src/core/plan/index.ts';
import { translatorOf } from '../../support/translators.ts';
import { demoKitchen } from '../kitchen/demos.ts';

/** What is written, by the formatter or by a sentence, and how it is said. */
const SAMPLES: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  en: [
    ['Wait 1 min 30 s.', 'Wait 1 minute 30 seconds.'],
    ['Rest 24 h, then 3–4 L at 95 °C.', 'Rest 24 hours, then 3 to 4 litres at 95 degrees Celsius.'],
    ['Fill 1½ L, ½ full.', 'Fill 1.5 litres, half full.'],
    ['16 A breaker, 2 m away; 2 L/min.', '16 amperes breaker, 2 metres away; 2 litres a minute.'],
    ['Kettle 2 has 4 handles.', 'Kettle 2 has 4 handles.'],
    ['CO alarm at 18:05.', 'carbon monoxide alarm at 18:05.'],
  ],
  he: [
    ['המתינו 1 דק׳ 30 שנ׳.', 'המתינו דקה אחת 30 שניות.'],
    ['השבתה 24 שע׳, 2 שע׳ ועוד 3 דק׳.', 'השבתה 24 שעות, שעתיים ועוד 3 דקות.'],
    ['½ ליטר ב־95°C', 'חצי ליטר ב־95 מעלות צלזיוס'],
    ['40 ס״מ, 1.2 מ״ר, 2.5 ליטר', '40 סנטימטר, 1.2 מטר רבוע, 2.5 ליטר'],
  ],
  fr: [
    ['Attendez 1 min 30 s.', 'Attendez 1 minute 30 secondes.'],
    ['24\u00a0h, 1,5\u202fL, 95 °C', '24 heures, 1,5 litre, 95 degrés Celsius'],
    ['3–4 L, 1½ L, ½ pleine', '3 à 4 litres, 1,5 litre, un demi pleine'],
    ['Le foyer 2 le soir', 'Le foyer 2 le soir'],
  ],
  es: [
    ['Espere 1 min 30 s.', 'Espere 1 minuto 30 segundos.'],
    ['24 h, 1,5 L, 95 °C', '24 horas, 1,5 litros, 95 grados Celsius'],
    ['aprox. 9 min, 3–4 L', 'aproximadamente 9 minutos, 3 a 4 litros'],
    ['El paso 2 a las 18:05', 'El paso 2 a las 18:05'],
  ],
};

const offered = LANGUAGES.filter(({ isOffered }) => isOffered);
/** A number with a sign that a voice would spell. */
const SIGN =
  /\d\s?(h|min|s|L|L\/min|m|cm|mm|m²|m³|kg|W|kW|V|A|°C|°F|%|\p{L}+[׳״]\p{L}*)(?![\p{L}\p{N}])|[½¼¾×]/u;

function messagesIn(value: unknown): Message[] {
  if (typeof value !== 'object' || value === null) return [];
  const inside = Object.values(value).flatMap(messagesIn);
  return 'key' in value && 'params' in value ? [value as Message, ...inside] : inside;
}

describe.each(offered.map(({ name, tag }) => [name, tag] as const))(
  '%s, as it is said aloud',
  (_, language) => {
    it('says units, fractions and ranges in whole words, with the form of the number', async () => {
      const { t } = await translatorOf(language);
      const samples = SAMPLES[language] ?? [];
      expect(samples.length).toBeGreaterThan(3);
      expect(samples.map(([text]) => t('run.voice.aloud', { text }))).toEqual(
        samples.map(([, said]) => said),
      );
    });

    it('leaves no sign for a voice to spell in the steps of a plan', async () => {
      const { t, say } = await translatorOf(language);
      const { steps, gates } = buildPlan(demoKitchen('flat-coils.kitchen.json'));
      const all = messagesIn({ steps, gates }).map(say);
      expect(all.length).toBeGreaterThan(500);
      expect(all.some((text) => SIGN.test(text))).toBe(true);
      const left = all
        .map((text) => t('run.voice.aloud', { text }))
        .filter((one) => SIGN.test(one));
      expect([...new Set(left)]).toEqual([]);
    });
  },
);
