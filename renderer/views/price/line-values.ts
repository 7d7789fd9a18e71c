import type { StatedLine } from '../../../core/job/index.ts'
import { cannotHold, type Line } from '../../../core/pricing/index.ts'
import {
  fail,
  ok,
  parseQuantity,
  parseUnitPrice,
  printUnitPrice,
  type Result,
  unitPrice,
} from '../../../core/units/index.ts'
import { printThousandths } from '../../state/print.ts'
import { capital } from '../../state/things.ts'

/** The two figures of a line that can be stated by hand. */
export type LineFigure = 'thousandths' | 'price'

/** What was counted and looked up for a line, whether or not something is stated in its place. */
export function computedOf(line: Line): Pick<Line, 'thousandths' | 'price' | 'amount'> {
  return line.overridden?.computed ?? line
}

/** Reads what is typed for a figure of a line, or says what is wrong and what would be right. */
export function readFigure(
  line: Line,
  figure: LineFigure,
  text: string,
): Result<Partial<Pick<StatedLine, LineFigure>>, string> {
  const read = figure === 'price' ? parseUnitPrice(text) : parseQuantity(text)
  if (!read.ok) return fail(`${capital(read.error.message)}: ${read.error.fix}.`)
  const computed = computedOf(line)
  const stated = {
    thousandths: figure === 'thousandths' ? read.value : null,
    price: figure === 'price' ? unitPrice(read.value) : null,
  }
  const wrong = cannotHold({ ...computed, unit: line.unit }, stated)
  if (wrong !== null) return fail(`${capital(wrong.message)}. ${wrong.fix}`)
  return ok(figure === 'price' ? { price: stated.price } : { thousandths: stated.thousandths })
}

/** A figure as it stands in its cell and in its entry. */
export function printFigure(figure: LineFigure, value: number): string {
  return figure === 'price' ? printUnitPrice(unitPrice(value)) : printThousandths(value)
}
