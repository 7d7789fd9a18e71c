import { fail, ok, type Result } from '../units/index.ts'
import { clearField, setField } from './commands.ts'
import { FIELDS, FIELDS_WITHOUT_PRICE, findField } from './fields.ts'
import { excerpt } from './json-shape.ts'
import { nearestName } from './nearest-name.ts'
import type { Fault, FieldPath, FieldSpec, JobStatement, JsonValue } from './types.ts'

/** A choice that a customer is offered: a name, and the fields that are stated otherwise with it. */
export interface JobOption {
  readonly name: string
  readonly changes: readonly { readonly path: FieldPath; readonly text: string }[]
}

type Wrong = Pick<Fault, 'message' | 'fix'>

/** A quote with more is a catalogue, and each is estimated. */
const MOST = 8
const LONGEST_NAME = 80
const SAMPLE = 'Wider boards underfoot: decking.size = 2x6'
/** Fields that an option may not change: the job's own names, and the options themselves. */
const NOT_AN_OPTION: ReadonlySet<FieldPath> = new Set([
  ...FIELDS_WITHOUT_PRICE,
  'pricing.options',
  'pricing.book',
])
const OFFERED: readonly FieldPath[] = FIELDS.map(({ path }) => path).filter(
  (path) => !NOT_AN_OPTION.has(path),
)

/**
 * Reads options as typed: `Higher: size.height = 4 ft, guard.where = all open edges`, semicolons or lines between them.
 * A value that holds a comma or a semicolon stands in braces. The first fault is told; an empty text is an empty list.
 */
export function readOptions(text: string): Result<readonly JobOption[], Wrong> {
  const read: JobOption[] = []
  for (const written of outsideBraces(text, /[;\n]/)) {
    if (written === '') continue
    const option = readOption(written)
    if (!option.ok) return option
    const { name } = option.value
    if (read.some((other) => other.name === name))
      return fail({
        message: `two options are called "${excerpt(name)}"`,
        fix: 'give each a name of its own',
      })
    read.push(option.value)
  }
  if (read.length > MOST)
    return fail({ message: `there are ${read.length} options`, fix: `offer at most ${MOST}` })
  return ok(read)
}

/** A list that was read with its job. Throws on any other text: that is a bug, not input. */
export function optionList(text: string): readonly JobOption[] {
  const read = readOptions(text)
  if (!read.ok) throw new Error(read.error.message)
  return read.value
}

/** As they are read again. */
export function printOptions(options: readonly JobOption[]): string {
  return options
    .map(({ name, changes }) => {
      const words = changes.map(({ path, text }) => `${path} = ${/[,;\n]/.test(text) ? `{${text}}` : text}`)
      return `${name}: ${words.join(', ')}`
    })
    .join('; ')
}

/** The statement as it would be with an option taken. */
export function withOption(statement: JobStatement, { changes }: JobOption): JobStatement {
  return changes.reduce((changed, { path, text }) => {
    const field = findField(path)
    if (field === undefined) return changed
    return text === '' ? clearField(changed, path) : setField(changed, path, optionValue(field, text))
  }, statement)
}

/** A value of an option, written as text, as its field takes it. */
export function optionValue({ kind }: FieldSpec, text: string): JsonValue {
  return kind === 'flag' && (text === 'yes' || text === 'no') ? text === 'yes' : text
}

function readOption(written: string): Result<JobOption, Wrong> {
  const [, name = '', rest = ''] = /^([^:=]+):(.*)$/s.exec(written) ?? []
  const called = name.trim()
  if (called === '')
    return fail({ message: `"${excerpt(written)}" names no option`, fix: `write it as ${SAMPLE}` })
  if (called.length > LONGEST_NAME)
    return fail({
      message: `an option's name has ${called.length} characters`,
      fix: `use at most ${LONGEST_NAME}`,
    })
  const changes: { path: FieldPath; text: string }[] = []
  for (const part of outsideBraces(rest, /,/)) {
    const change = readChange(part, called)
    if (!change.ok) return change
    if (changes.some(({ path }) => path === change.value.path))
      return fail({
        message: `the option "${excerpt(called)}" changes ${change.value.path} twice`,
        fix: 'state it once',
      })
    changes.push(change.value)
  }
  return ok({ name: called, changes })
}

function readChange(
  part: string,
  name: string,
): Result<{ readonly path: FieldPath; readonly text: string }, Wrong> {
  const [, stated = '', value = ''] = /^([A-Za-z.\- ]+?)\s*=(.*)$/s.exec(part) ?? []
  const whose = `the option "${excerpt(name)}"`
  if (stated === '') return fail({ message: `${whose} changes nothing`, fix: `write it as ${SAMPLE}` })
  const path = stated.trim()
  const field = findField(path)
  if (field === undefined || NOT_AN_OPTION.has(path) || field.kind === 'ground') {
    const near = field === undefined ? nearestName(path, OFFERED) : null
    return fail({
      message: `${whose} cannot change "${excerpt(path)}"`,
      fix: near === null ? `name a field of the job, as in ${SAMPLE}` : `did you mean ${near}?`,
    })
  }
  const text = value.trim()
  return ok({ path, text: text.startsWith('{') && text.endsWith('}') ? text.slice(1, -1) : text })
}

/** Splits at a sign, but not within braces; parts are trimmed. */
function outsideBraces(text: string, sign: RegExp): readonly string[] {
  const parts: string[] = []
  let part = ''
  let depth = 0
  for (const character of text) {
    if (character === '{') depth += 1
    if (character === '}') depth = Math.max(0, depth - 1)
    if (depth === 0 && sign.test(character)) {
      parts.push(part.trim())
      part = ''
    } else part += character
  }
  return [...parts, part.trim()]
}
