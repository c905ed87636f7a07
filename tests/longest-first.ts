import type { TestSpecification } from 'vitest/node';
import { BaseSequencer } from 'vitest/node';

/** Folders whose files start a browser, a kernel or a whole study: some take a minute. */
const LONG_ONES = /^\/?tests\/(?:app|demo|notebooks|report|cli)\/|\/typology\/|\/claims\//;

/** Long files first, so that all workers end together: as they took last time, or by their folder where nobody knows. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const { root } = this.ctx.config;
    const isLong = ({ moduleId }: TestSpecification) => LONG_ONES.test(moduleId.slice(root.length));
    return [...sorted.filter(isLong), ...sorted.filter((file) => !isLong(file))];
  }
}
