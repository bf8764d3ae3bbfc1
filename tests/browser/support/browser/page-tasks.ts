import type { Page } from 'playwright-core';

/** A task of the page's thread: the processor time it took, which a busy machine does not stretch as it does the hour, and the marks set in it. */
export type PageTask = { readonly cpuMs: number; readonly marks: readonly string[] };

/** What is read of an event of the browser's trace; times in µs. */
type Traced = {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args: { readonly name?: string };
};

const TASK = /RunTask$/;
const US_PER_MS = 1000;

function tasksOf(events: readonly Traced[]): readonly PageTask[] {
  const thread = ({ pid, tid }: Traced) => `${pid} ${tid}`;
  const pages = new Set(
    events
      .filter(({ name, args }) => name === 'thread_name' && args.name === 'CrRendererMain')
      .map(thread),
  );
  const mine = events.filter((event) => pages.has(thread(event)));
  // A mark is an instant or the beginning of a span, as the browser's version has it.
  const marks = mine.filter(({ ph, name }) => ph !== 'X' && ph !== 'M' && !TASK.test(name));
  return mine
    .filter(({ ph, name, tdur }) => ph === 'X' && TASK.test(name) && tdur !== undefined)
    .map((task) => ({
      cpuMs: task.tdur! / US_PER_MS,
      marks: marks
        .filter(
          (mark) =>
            thread(mark) === thread(task) &&
            task.ts <= mark.ts &&
            mark.ts <= task.ts + (task.dur ?? 0),
        )
        .map(({ name }) => name),
    }));
}

/** All tasks of the page's thread while something is done, by the browser's own trace. */
export async function tasksDuring(
  page: Page,
  act: () => Promise<void>,
): Promise<readonly PageTask[]> {
  const session = await page.context().newCDPSession(page);
  const events: Traced[] = [];
  session.on('Tracing.dataCollected', ({ value }) =>
    events.push(...(value as unknown as Traced[])),
  );
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['toplevel', 'blink.user_timing'] },
  });
  try {
    await act();
  } finally {
    const handedIn = new Promise((done) => session.once('Tracing.tracingComplete', done));
    await session.send('Tracing.end');
    await handedIn;
    await session.detach();
  }
  return tasksOf(events);
}
