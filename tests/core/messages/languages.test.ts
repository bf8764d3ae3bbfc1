import { describe, expect, it } from 'vitest';
import { english } from '../../../src/core/messages/english/index.ts';
import { message } from '../../../src/core/messages/index.ts';
import { LANGUAGES, languageFor } from '../../../src/core/messages/languages/index.ts';
import { translatorOf } from '../../support/translators.ts';

const tagFor = (...tags: string[]): string => languageFor(tags).tag;

describe('which language a reader gets', () => {
  it('is the first that is here, by its tag or its language alone', () => {
    expect(tagFor('xx', 'en-US')).toBe('en');
    expect(tagFor('EN-xa')).toBe('en-XA');
    expect(tagFor('xx')).toBe(LANGUAGES[0].tag);
    expect(tagFor()).toBe(LANGUAGES[0].tag);
  });

  it('is never the pseudo-locale unless it is asked for', () => {
    expect(LANGUAGES.filter(({ isOffered }) => isOffered).map(({ name }) => name)).toEqual([
      'English',
      'עברית',
      'Français',
      'Español',
    ]);
  });
});

describe.each(LANGUAGES)('$name', ({ tag, sentences }) => {
  it('loads every key of the catalogue that a page shows, once', async () => {
    const { first, sections } = await sentences();
    const parts = await Promise.all([first(), ...Object.values(sections).map((load) => load())]);
    const keys = parts.flatMap((part) => Object.keys(part));
    const shown = Object.keys(english).filter((key) => !key.startsWith('terminal.'));
    expect(keys.toSorted()).toEqual(shown.toSorted());
  });

  it('says what comes next as one sentence', async () => {
    const { t } = await translatorOf(tag);
    const step = message('steps.glow.off', { burner: '1' });
    expect(t('run.step.next', { step, lengthS: 600 })).not.toMatch(/\.\s*\(/u);
  });
});
