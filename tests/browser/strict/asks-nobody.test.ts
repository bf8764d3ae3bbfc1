import { expect, it } from 'vitest';
import { dispose, startTablet } from '../support/tablet.ts';

// That no test's page asks anything of another machine is looked at whenever its tablet is let go.
it('a page that asks something of another machine is found when its tablet is let go', async () => {
  const tablet = await startTablet();
  const page = await tablet.context.newPage();
  // An address for examples, where nobody is (RFC 5737).
  await page.goto('http://192.0.2.1/', { timeout: 1000 }).catch(() => undefined);
  await expect(dispose(tablet)).rejects.toThrow('Asked of other machines: http://192.0.2.1/');
});
