import { findNodeAtLocation, getNodeValue, type Node, type ParseError, parseTree } from 'jsonc-parser'
import type { Fault } from '../../core/job/index.ts'
import { type PriceBook, readPriceBook } from '../../core/pricing/index.ts'
import { fail, type Result } from '../../core/units/index.ts'

/** A price book is some hundred lines; what is far longer is something else. */
const LONGEST = 10_000_000

/** Reads a price book's text: JSON, with comments and trailing commas allowed; every fault with its place in the text. */
export function readPriceText(text: string): Result<PriceBook, readonly Fault[]> {
  if (text.length > LONGEST) {
    return fail([
      {
        path: '',
        message: 'the file is too long to be a price book',
        fix: 'name another file',
        line: 1,
        column: 1,
      },
    ])
  }
  const errors: ParseError[] = []
  const tree = parseTree(text, errors, { allowTrailingComma: true, disallowComments: false })
  const [first] = errors
  if (tree === undefined || first !== undefined) {
    const fault = {
      path: '',
      message: text.trim() === '' ? 'the file is empty' : 'this is not JSON',
      fix: 'give a price book as written by this program',
    }
    return fail([{ ...fault, ...placeOf(text, first?.offset ?? 0) }])
  }
  const read = readPriceBook(getNodeValue(tree))
  if (read.ok) return read
  return fail(read.error.map((fault) => ({ ...fault, ...placeOf(text, nodeOf(tree, fault.path).offset) })))
}

/** The node at a path such as `lumber[2].stock[0].price`, or the nearest one around it that is there. */
function nodeOf(tree: Node, path: string): Node {
  const keys = [...path.matchAll(/[^.[\]]+/g)].map(([key]) => (/^\d+$/.test(key) ? Number(key) : key))
  for (let depth = keys.length; depth > 0; depth -= 1) {
    const node = findNodeAtLocation(tree, keys.slice(0, depth))
    if (node !== undefined) return node
  }
  return tree
}

function placeOf(text: string, index: number): { readonly line: number; readonly column: number } {
  const lines = text.slice(0, index).split(/\r\n|\r|\n/)
  return { line: lines.length, column: (lines.at(-1) ?? '').length + 1 }
}
