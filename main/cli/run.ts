import { readArguments } from './arguments.ts'
import type { ExitCode, Output } from './output.ts'

/** Runs one command line and answers its exit code. Commands are loaded when they are asked for. */
export async function run(words: readonly string[], version: string, output: Output): Promise<ExitCode> {
  const read = readArguments(words)
  if (!read.ok) {
    output.warn(`${read.error}\nkerfwright --help says what there is.\n`)
    return 2
  }
  const command = read.value
  switch (command.kind) {
    case 'help': {
      const { HELP } = await import('./help.ts')
      output.say(HELP)
      return 0
    }
    case 'version':
      output.say(`${version}\n`)
      return 0
    case 'estimate': {
      const { runEstimate } = await import('./commands/estimate.ts')
      return runEstimate(command, output)
    }
    case 'compare': {
      const { runCompare } = await import('./commands/compare.ts')
      return runCompare(command, output)
    }
    case 'cut': {
      const { runCut } = await import('./commands/cut.ts')
      return runCut(command, output)
    }
    case 'check': {
      const { runCheck } = await import('./commands/check.ts')
      return runCheck(command, output)
    }
    case 'rest': {
      const { runRest } = await import('./commands/rest.ts')
      return runRest(command, output)
    }
    case 'ground': {
      const { runGround } = await import('./commands/ground.ts')
      return runGround(command, output)
    }
    case 'size': {
      const { runSize } = await import('./commands/size.ts')
      return runSize(command, output)
    }
    case 'prices': {
      const { runPrices } = await import('./commands/prices.ts')
      return runPrices(command, output)
    }
    case 'papers': {
      const { runPapers } = await import('./commands/papers.ts')
      return runPapers(command, output)
    }
    case 'new': {
      const { runNew } = await import('./commands/new.ts')
      return runNew(command, output)
    }
  }
}
