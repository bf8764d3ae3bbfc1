import type { Reporter, TestCase, TestModule } from 'vitest/node';

function noteOf(test: TestCase): string {
  const result = test.result();
  return result.state === 'skipped' ? (result.note ?? '') : '';
}

/** Names and counts at the end what was left out: nothing is passed over in silence. */
export const leftOut: Reporter = {
  onTestRunEnd(modules: readonly TestModule[]) {
    const names = modules.flatMap((module) =>
      [...module.children.allTests('skipped')].map((test) =>
        [test.fullName, noteOf(test)].filter((one) => one !== '').join(': '),
      ),
    );
    console.log(`Left out: ${names.length === 0 ? 'no test' : names.length}`);
    for (const name of names) console.log(`  - ${name}`);
  },
};
