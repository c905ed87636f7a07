import {
  createVitest,
  type Reporter,
  type TestCase,
  type TestModule,
  type TestSequencer,
  type TestSpecification,
} from 'vitest/node';

/**
 * One vitest, kept running, that is asked again and again, so that each broken file costs its tests and not the start
 * of everything. It is a process of its own, so that code which never ends can be ended.
 */

export interface Asked {
  /** Files that were changed since the last time, be it only back. */
  readonly changed: readonly string[];
  /** Test files in the order they are run; the first test that fails ends it. */
  readonly tests: readonly string[];
}

export interface Heard {
  /** The first test that failed, with its file; null where none did. */
  readonly failed: string | null;
  /** Test file -> seconds. */
  readonly took: Readonly<Record<string, number>>;
}

/** Nearest first, as they were asked. */
class AsAsked implements TestSequencer {
  sort(files: TestSpecification[]): TestSpecification[] {
    return files;
  }
  shard(files: TestSpecification[]): TestSpecification[] {
    return files;
  }
}

/** What this run alone has shown: the runner itself also remembers tests that it did not come to this time. */
class First implements Reporter {
  failed: string | null = null;
  readonly took: Record<string, number> = {};

  onTestCaseResult(test: TestCase): void {
    if (test.result().state === 'failed') this.failed ??= `${test.module.relativeModuleId}: ${test.fullName}`;
  }

  onTestModuleEnd(module: TestModule): void {
    this.took[module.relativeModuleId] = module.diagnostic().duration / 1000;
    if (module.state() === 'failed') this.failed ??= `${module.relativeModuleId}: does not load`;
  }

  onTestRunEnd(_: unknown, faults: readonly unknown[]): void {
    if (faults.length > 0) this.failed ??= 'an error outside of the tests';
  }

  clear(): void {
    this.failed = null;
    for (const test of Object.keys(this.took)) delete this.took[test];
  }
}

const [root] = process.argv.slice(2);
const first = new First();
const vitest = await createVitest('test', {
  config: `${root}/tests/vitest.config.ts`,
  root,
  watch: false,
  bail: 1,
  maxWorkers: 1,
  update: false,
  reporters: [first],
  sequence: { sequencer: AsAsked },
});
await vitest.standalone();

async function ask({ changed, tests }: Asked): Promise<Heard> {
  for (const file of changed) vitest.invalidateFile(`${root}/${file}`);
  first.clear();
  const specifications = tests.map((test) => vitest.getRootProject().createSpecification(`${root}/${test}`));
  await vitest.runTestSpecifications(specifications, false);
  return { failed: first.failed, took: { ...first.took } };
}

process.on('message', (asked: Asked) => {
  ask(asked).then((heard) => process.send?.(heard));
});
process.send?.('ready');
