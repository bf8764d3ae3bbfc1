/**
 * What comes with the first load and is asked for by later pieces of the page too, but not by the
 * planner's worker. The builder would cut it into eight; in one piece it is 3 kB smaller, gzip.
 */
const FILES = [
  'node_modules/solid-js/',
  'vite/preload-helper',
  'src/host/timeout/with-timeout.ts',
  'src/app/context/language.ts',
  'src/app/context/zone.ts',
  'src/app/pages/run/step/main-action.ts',
  'src/app/parts/time/when.ts',
  'src/core/messages/languages/languages.ts',
  'src/core/messages/translate/intl-format.ts',
  'src/core/messages/translate/translator.ts',
  '/traits.ts',
  ...['elapsed-interval', 'plan-index', 'reason', 'constants', 'cooling'].map(
    (file) => `src/core/run/model/${file}.ts`,
  ),
  ...['alarms', 'belonging', 'boiled-water', 'faults', 'gates', 'rest-days', 'undone'].map(
    (file) => `src/core/run/rules/${file}.ts`,
  ),
  ...['clock-word', 'cooling', 'map-spans', 'timer', 'unproved-time'].map(
    (file) => `src/core/run/timers/${file}.ts`,
  ),
];

/** Told to the builder: the piece of that name, see `FILES`. */
export const FIRST_PIECE = {
  name: 'first',
  test: (id: string) => FILES.some((file) => id.includes(file)),
};
