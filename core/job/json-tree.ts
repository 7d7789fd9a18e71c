import { createScanner, type Node, type ParseError, parseTree, printParseErrorCode } from 'jsonc-parser'
import { fail, ok, type Result } from '../units/index.ts'
import { excerpt } from './json-shape.ts'
import { placeOf } from './text-place.ts'
import type { Fault, FieldPath, JsonValue } from './types.ts'

/** Deepest nesting that is parsed: our files have some six levels, and the parser recurses once per level. */
const DEEPEST = 32

/** What a text should be, for the sentences about it. */
export interface ExpectedText {
  /** e.g. "job" */
  readonly name: string
  readonly sample: string
  /** longest text that is parsed, in UTF-16 units */
  readonly longest: number
}

/** Scanner's numbers of the tokens that open and close an object or a list (`SyntaxKind` of jsonc-parser). */
const OPENING = [1, 3]
const CLOSING = [2, 4]
const END_OF_TEXT = 17

/** Parses JSON with comments and trailing commas; refuses what a plain parse would pass over in silence. */
export function readJsonTree(text: string, expected: ExpectedText): Result<Node, readonly Fault[]> {
  if (text.length > expected.longest) {
    const fix = `keep it under ${expected.longest} characters`
    return fail([at(text, 0, `the file is too long to be a ${expected.name}`, fix)])
  }
  const tooDeep = firstTooDeep(text)
  if (tooDeep !== null) {
    const fix = `a ${expected.name} needs far fewer levels`
    return fail([at(text, tooDeep, `brackets are nested more than ${DEEPEST} deep here`, fix)])
  }
  const errors: ParseError[] = []
  const tree = parseTree(text, errors, { allowTrailingComma: true, disallowComments: false })
  const first = errors[0]
  if (tree === undefined && first?.offset === text.length) {
    return fail([at(text, 0, 'the file is empty', `write a ${expected.name}, such as ${expected.sample}`)])
  }
  // what follows the first error is mostly its echo
  if (tree === undefined || first !== undefined) return fail([syntaxFault(text, first)])
  const faults = keyFaults(text, tree, '')
  return faults.length > 0 ? fail(faults) : ok(tree)
}

/** The value that a checked tree stands for. */
export function valueOfTree(node: Node): JsonValue {
  switch (node.type) {
    case 'object':
      return Object.fromEntries(
        propertiesOf(node).map(({ key, value }): [string, JsonValue] => [
          key.value as string,
          valueOfTree(value),
        ]),
      )
    case 'array':
      return (node.children ?? []).map(valueOfTree)
    default:
      return node.value as JsonValue
  }
}

/** Where a path's fault is shown: its value, else its key, else the nearest branch that stands in the text. */
export function nodeAt(root: Node, path: FieldPath): Node {
  // a key may hold dots itself, so the path is matched from its front, by the longest key that fits
  const fitting = childrenOf(root)
    .filter(({ key }) => path === key || path.startsWith(`${key}.`))
    .reduce<Child | null>(
      (long, child) => (long === null || child.key.length > long.key.length ? child : long),
      null,
    )
  if (fitting === null) return root
  return path === fitting.key ? fitting.value : nodeAt(fitting.value, path.slice(fitting.key.length + 1))
}

/** The key of the property at a path, or null where the path is not that of a property in the text. */
export function keyNodeAt(root: Node, path: FieldPath): Node | null {
  const parent = nodeAt(root, path).parent
  return parent?.type === 'property' ? (parent.children?.[0] ?? null) : null
}

interface Child {
  readonly key: string
  readonly value: Node
}

function childrenOf(node: Node): readonly Child[] {
  if (node.type === 'array') return (node.children ?? []).map((value, index) => ({ key: `${index}`, value }))
  return propertiesOf(node).map(({ key, value }) => ({ key: key.value as string, value }))
}

function propertiesOf(node: Node): readonly { readonly key: Node; readonly value: Node }[] {
  if (node.type !== 'object') return []
  return (node.children ?? []).flatMap(({ children }) => {
    const [key, value] = children ?? []
    return key === undefined || value === undefined ? [] : [{ key, value }]
  })
}

/** A plain parse keeps the last of two equal keys, and lets "__proto__" replace an object's prototype. */
function keyFaults(text: string, node: Node, branch: FieldPath): readonly Fault[] {
  if (node.type === 'array')
    return (node.children ?? []).flatMap((child, i) => keyFaults(text, child, `${branch}.${i}`))
  const faults: Fault[] = []
  const earlier = new Map<string, Node>()
  for (const { key, value } of propertiesOf(node)) {
    const name = key.value as string
    const path = branch === '' ? name : `${branch}.${name}`
    const first = earlier.get(name)
    if (name === '__proto__') {
      faults.push({ ...at(text, key.offset, '"__proto__" is no name for a field', 'leave it out'), path })
    } else if (first !== undefined) {
      const line = placeOf(text, first.offset).line
      const message = `"${excerpt(name)}" stands here a second time, after line ${line}`
      faults.push({ ...at(text, key.offset, message, 'keep one of the two'), path })
    } else earlier.set(name, key)
    faults.push(...keyFaults(text, value, path))
  }
  return faults
}

function firstTooDeep(text: string): number | null {
  const scanner = createScanner(text, true)
  let depth = 0
  for (let token: number = scanner.scan(); token !== END_OF_TEXT; token = scanner.scan()) {
    if (OPENING.includes(token)) depth += 1
    if (CLOSING.includes(token)) depth -= 1
    if (depth > DEEPEST) return scanner.getTokenOffset()
  }
  return null
}

const SYNTAX: ReadonlyMap<string, readonly [message: string, fix: string]> = new Map([
  [
    'InvalidSymbol',
    [
      'this word or sign is not JSON',
      'write text and names in double quotes; numbers as 12 or 12.5, with a digit first',
    ],
  ],
  ['InvalidNumberFormat', ['this is not a number', 'write it as 12 or 12.5']],
  ['PropertyNameExpected', ['a field’s name is missing here', 'write it in double quotes, then a colon']],
  ['ValueExpected', ['a value is missing here', 'write text in double quotes, a number, true or false']],
  ['ColonExpected', ['a colon is missing before this', 'write a colon between a field’s name and its value']],
  ['CommaExpected', ['a comma is missing before this', 'put a comma between two fields or entries']],
  ['CloseBraceExpected', ['a } is missing before the end', 'close every { with a }']],
  ['CloseBracketExpected', ['a ] is missing', 'close every [ with a ]']],
  ['EndOfFileExpected', ['the file should have ended before this', 'leave out what follows the last }']],
  ['UnexpectedEndOfComment', ['this comment has no end', 'end it with */']],
  ['InvalidCommentToken', ['this comment has no end', 'end it with */']],
  [
    'UnexpectedEndOfString',
    [
      'this text has no closing quote on its line',
      'end it with a double quote; an inch mark inside it is written \\"',
    ],
  ],
  ['UnexpectedEndOfNumber', ['this number breaks off', 'write it as 12 or 12.5']],
  ['InvalidUnicode', ['this \\u is not followed by four hexadecimal digits', 'write the letter itself']],
  [
    'InvalidEscapeCharacter',
    [
      'a backslash in this text is followed by the wrong letter',
      'write \\\\ for a backslash and \\" for an inch mark',
    ],
  ],
  ['InvalidCharacter', ['this text holds a control character', 'take it out; a tab is written \\t']],
])

function syntaxFault(text: string, error: ParseError | undefined): Fault {
  if (error === undefined) throw new Error('a text without a tree has a syntax error')
  const [message, fix] = SYNTAX.get(printParseErrorCode(error.error)) ?? [
    'this is not JSON',
    'compare it with a new job',
  ]
  const sign = excerpt(text.slice(error.offset, error.offset + error.length).trim())
  return at(text, error.offset, sign === '' ? message : `${message}: ${sign}`, fix)
}

function at(text: string, index: number, message: string, fix: string): Fault {
  return { path: '', message, fix, ...placeOf(text, index) }
}
