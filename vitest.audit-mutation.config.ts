import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

/** Bounds by hand and single rules first, then the plans with every number changed: the first failure ends a mutant's run. */
const ORDER = ['stock-rules', 'aims-and-wild', 'details', 'frozen-plans', 'what-it-says']

class QuickFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification) => ORDER.findIndex((name) => moduleId.includes(name))
    return [...files].sort((a, b) => place(a) - place(b))
  }
}

/** The mutation run of the auditor: plans that are kept in files, without an engine, so that a mutant takes a moment. */
export default defineConfig({
  test: {
    include: ['tests/core/cutting/audit/*.test.ts'],
    testTimeout: 60_000,
    // one process without isolation: a run for each change, and nothing here keeps state
    isolate: false,
    fileParallelism: false,
    sequence: { sequencer: QuickFirst },
  },
})
