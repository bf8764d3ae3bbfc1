import { defineConfig } from 'vitest/config';
import { leftOut } from './tests/browser/support/browser/left-out.ts';

const FOREVER = ['node_modules/**'];
/**
 * Long, and not what an everyday change breaks: CI runs them, `npm run browser:long` here. What is
 * left for every day is one whole purge, hands, alarms, Stop, the survey, answers, axe in a run and offline.
 */
const LONG = [
  'tests/browser/advice.test.ts',
  'tests/browser/axe-places.test.ts',
  'tests/browser/hosting.test.ts',
  'tests/browser/installable.test.ts',
  'tests/browser/pseudo-locale.test.ts',
  'tests/browser/screens.test.ts',
  'tests/browser/whole-job.test.ts',
  'tests/browser/faults/broken-part.test.ts',
  'tests/browser/faults/burned.test.ts',
  'tests/browser/faults/clocks.test.ts',
  'tests/browser/faults/new-version.test.ts',
  'tests/browser/faults/no-storage.test.ts',
  'tests/browser/faults/old-build.test.ts',
  'tests/browser/faults/other-tablet.test.ts',
  'tests/browser/faults/power-cut.test.ts',
  'tests/browser/faults/screen-and-sleep.test.ts',
  'tests/browser/faults/second-page.test.ts',
  'tests/browser/faults/sound-light.test.ts',
  'tests/browser/faults/storage.test.ts',
  'tests/browser/glance/hebrew.test.ts',
  'tests/browser/glance/keys-and-colours.test.ts',
  'tests/browser/glance/newcomer.test.ts',
  'tests/browser/glance/places-apart.test.ts',
  'tests/browser/glance/way-out.test.ts',
  'tests/browser/languages/french.test.ts',
  'tests/browser/languages/hebrew.test.ts',
  'tests/browser/languages/spanish.test.ts',
  'tests/browser/plan/course.test.ts',
  'tests/browser/plan/handouts.test.ts',
  'tests/browser/plan/kitchen-time.test.ts',
  'tests/browser/plan/late.test.ts',
  'tests/browser/plan/names.test.ts',
  'tests/browser/plan/room-told.test.ts',
  'tests/browser/plan/units.test.ts',
  'tests/browser/record/damaged-run.test.ts',
  'tests/browser/record/everything.test.ts',
  'tests/browser/record/record.test.ts',
  'tests/browser/rests/free-hours.test.ts',
  'tests/browser/rests/last-hot.test.ts',
  'tests/browser/rests/outlook.test.ts',
  'tests/browser/rests/rest-day.test.ts',
  'tests/browser/run/answers-at-once.test.ts',
  'tests/browser/run/batches.test.ts',
  'tests/browser/run/burners.test.ts',
  'tests/browser/run/crew.test.ts',
  'tests/browser/run/glance.test.ts',
  'tests/browser/run/in-the-way.test.ts',
  'tests/browser/run/rehearse.test.ts',
  'tests/browser/run/used.test.ts',
  'tests/browser/run/words-apart.test.ts',
  'tests/browser/survey/drawing.test.ts',
  'tests/browser/survey/kitchens.test.ts',
  'tests/browser/survey/picture.test.ts',
  'tests/browser/survey/words-apart.test.ts',
];
/** What is measured by ear, by the minute or by the longest task wants a calm machine; these hardly load it. */
const ALONE = [
  'tests/browser/faults/alarm-heard.test.ts',
  'tests/browser/idle.test.ts',
  'tests/browser/plan/beside-page.test.ts',
];

/** What comes by way of a disk or a plan that is worked out; a busy machine is no fault. */
const POLL_MS = 20_000;

/**
 * Tests in a real browser. Most of their time is waiting, so two files run at
 * once on two cores; in the long lane those that measure run after the others.
 */
const long = process.env.GLOWPOUR_LONG !== undefined;
export default defineConfig({
  test: {
    globalSetup: 'tests/browser/support/browser/global-setup.ts',
    reporters: ['default', leftOut],
    projects: [
      {
        test: {
          name: 'browser',
          environment: 'node',
          include: long ? LONG : ['tests/browser/**/*.test.ts'],
          exclude: long ? FOREVER : [...FOREVER, ...ALONE, ...LONG],
          testTimeout: 240_000,
          expect: { poll: { timeout: POLL_MS } },
          hookTimeout: 120_000,
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: {
          name: 'measured',
          environment: 'node',
          include: long ? ALONE : [],
          testTimeout: 180_000,
          expect: { poll: { timeout: POLL_MS } },
          hookTimeout: 120_000,
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
