import { expect, it } from 'vitest';
import { message } from '../../../../src/core/messages/index.ts';
import type { Message } from '../../../../src/core/messages/index.ts';
import { GRAVE } from '../../../../src/core/plan/build/gravity.ts';
import { isAboutLateness, leadOf } from '../../../../src/app/pages/plan/notices/leads.ts';

it('every notice that is more than good to know has something to press, or stands in the first line', () => {
  for (const key of Object.keys(GRAVE)) {
    const notice = { ...message('common.resource.hands'), key } as Message;
    const led = leadOf(notice) !== undefined;
    expect(led !== isAboutLateness(notice), key).toBe(true);
  }
});
