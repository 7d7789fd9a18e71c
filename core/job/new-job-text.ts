import { FIELDS } from './fields.ts'
import { printBounds } from './print-field.ts'
import type { FieldPath, FieldSpec } from './types.ts'
import { JOB_VERSION } from './upgrade.ts'

const OPENING =
  'A deck, as its builder states it. Every field below is at its default: to change one, take the // off its line ' +
  'and put your own value in. Lengths are written as "12 ft 6 1/2 in" or as a number of inches, sums as "$450", ' +
  'shares as "30 %". Local code and the building official decide; frost depth, snow and soil are local facts.'

const WIDTH = 110

/** The text of a starting job: every field with its help, its bounds and its default, the fields commented out. */
export function newJobText(): string {
  const lines = [...commented(OPENING, ''), '{', `  "version": ${JOB_VERSION},`]
  let open: readonly string[] = []
  for (const field of FIELDS) {
    const keys = field.path.split('.')
    const branch = keys.slice(0, -1)
    const shared = sharedDepth(open, branch)
    for (let depth = open.length; depth > shared; depth -= 1) lines.push(`${indent(depth)}},`)
    for (let depth = shared; depth < branch.length; depth += 1) {
      lines.push('', `${indent(depth + 1)}${JSON.stringify(branch[depth])}: {`)
    }
    open = branch
    lines.push(...fieldLines(field, keys.at(-1) ?? '', indent(keys.length)))
  }
  for (let depth = open.length; depth > 0; depth -= 1) lines.push(`${indent(depth)}},`)
  return `${lines.join('\n')}\n}\n`
}

function fieldLines(field: FieldSpec, key: string, margin: string): readonly string[] {
  const prose = `${field.label}. ${field.help} ${rangeOf(field)}Default: ${field.basis}.`
  return [
    ...commented(prose, margin),
    `${margin}// ${JSON.stringify(key)}: ${JSON.stringify(field.default)},`,
  ]
}

function commented(prose: string, margin: string): readonly string[] {
  return wrapped(prose, WIDTH - margin.length - 3).map((line) => `${margin}// ${line}`)
}

function rangeOf(field: FieldSpec): string {
  if (field.choices !== undefined) {
    const labels = field.choiceLabels
    const choices = field.choices.map(
      (choice, i) => `"${choice}"${labels === undefined ? '' : ` (${labels[i]})`}`,
    )
    return choices.length === 1 ? `Only ${choices[0]}. ` : `One of ${choices.join(', ')}. `
  }
  const bounds = field.kind === 'text' ? '' : printBounds(field)
  return bounds === '' ? '' : `${bounds.charAt(0).toUpperCase()}${bounds.slice(1)}. `
}

function wrapped(prose: string, width: number): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of prose.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line)
      line = word
    } else line = line === '' ? word : `${line} ${word}`
  }
  return [...lines, line]
}

function sharedDepth(a: readonly FieldPath[], b: readonly FieldPath[]): number {
  const differs = a.findIndex((key, depth) => key !== b[depth])
  return differs === -1 ? a.length : differs
}

function indent(depth: number): string {
  return '  '.repeat(depth)
}
