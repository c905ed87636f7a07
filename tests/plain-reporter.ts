import type { Reporter, SerializedError, TestModule, TestRunEndReason } from 'vitest/node';

/** The last line of a run, for people and scripts alike: "N passed, N failed". */
export class PlainReporter implements Reporter {
  onTestRunEnd(
    modules: readonly TestModule[],
    faults: readonly SerializedError[],
    _reason: TestRunEndReason,
  ): void {
    let passed = 0;
    let skipped = 0;
    let failed = faults.length;
    for (const module of modules) {
      failed += module.errors().length;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === 'passed') passed++;
        else if (state === 'failed') failed++;
        else skipped++;
      }
    }
    // Written once the other reporters have had their say, so that it stands last.
    process.once('exit', () => {
      if (skipped > 0)
        process.stdout.write(
          `\n${skipped} passed over (not asked for, or their material is not on this machine)\n`,
        );
      process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
    });
  }
}
