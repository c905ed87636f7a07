import { createVitest, type TestSequencer, type TestSpecification } from 'vitest/node';

/**
 * One vitest, kept running, that is asked again and again, so that each broken file costs its tests and not the start
 * of everything. It is a process of its own, so that code which never ends can be ended.
 */

export interface Asked {
  /** The file that was changed since the last time. */
  readonly changed: string;
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

const [root] = process.argv.slice(2);
const vitest = await createVitest('test', {
  config: `${root}/tests/vitest.config.ts`,
  root,
  watch: false,
  bail: 1,
  maxWorkers: 1,
  update: false,
  reporters: [{}],
  sequence: { sequencer: AsAsked },
});
await vitest.standalone();

async function ask({ changed, tests }: Asked): Promise<Heard> {
  vitest.invalidateFile(`${root}/${changed}`);
  const specifications = tests.map((test) => vitest.getRootProject().createSpecification(`${root}/${test}`));
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(specifications, false);
  const took: Record<string, number> = {};
  let failed: string | null = unhandledErrors.length > 0 ? 'an error outside of the tests' : null;
  for (const module of testModules) {
    took[module.relativeModuleId] = module.diagnostic().duration / 1000;
    const [test] = [...module.children.allTests('failed')];
    if (test !== undefined) failed = `${module.relativeModuleId}: ${test.fullName}`;
    else if (module.state() === 'failed') failed = `${module.relativeModuleId} does not load`;
  }
  return { failed, took };
}

process.on('message', (asked: Asked) => {
  ask(asked).then((heard) => process.send?.(heard));
});
process.send?.('ready');
