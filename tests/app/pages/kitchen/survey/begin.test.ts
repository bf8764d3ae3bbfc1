import { expect, it } from 'vitest';
import { beginKitchen } from '../../../../../src/app/pages/kitchen/survey/begin.ts';
import { inEnglish } from '../../../../support/english.ts';

// Likely regions of CLDR (likelySubtags); a POSIX name of a locale is no BCP 47 tag, and devices give it all the same.
it.each([
  ['en-GB', 'GB'],
  ['he', 'IL'],
  ['fr', 'FR'],
  ['en-US@posix', 'US'],
  ['he_IL.UTF-8', 'IL'],
  ['C', 'US'],
  ['', 'US'],
])('a device whose language is %o begins a kitchen of %s', (device, country) => {
  expect(beginKitchen('Our flat', device, inEnglish).country).toBe(country);
});
