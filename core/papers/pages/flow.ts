import { printLength, type Ticks } from '../../units/index.ts'
import { metricText } from '../metric/metric-text.ts'
import type { Mark, Page, Placed } from '../page-types.ts'
import type { About, PageOptions, Sheet } from '../sheet-types.ts'
import type { Logo } from '../source.ts'
import { widthOf } from '../type/measure.ts'
import { fitText } from '../type/wrap.ts'
import { LINE, lineMark, textMark } from './marks.ts'
import { PAPER_NAMES, paperSize } from './paper.ts'

const SIDE = 40
const HEAD = 62
const FOOT = 50
/** most room for a logo, points, and its distance from the words beside it */
const LOGO_WIDE = 110
const LOGO_HIGH = 30
const LOGO_GAP = 10

/** Between columns, points. */
const COLUMN_GAP = 26

interface Columns {
  readonly count: number
  /** of the one that is written, from 0 */
  index: number
  readonly left: number
  /** width of all of them */
  readonly whole: number
  /** where they begin on this page, and how far down the longest of them reaches */
  top: number
  deepest: number
  /** where they end on this page, if before its foot */
  limit: number | null
  /** pages begun since, and after how many points they end on which of those */
  begun: number
  tail: { readonly page: number; readonly height: number } | null
}

export function columnWidth(whole: number, count: number): number {
  return (whole - COLUMN_GAP * (count - 1)) / count
}

/** Fills the pages of one sheet from the top down; a block asks for room and writes into it. */
export class Flow {
  left = SIDE
  width: number
  readonly top = HEAD
  readonly bottom: number
  readonly options: PageOptions
  readonly #sheet: Sheet
  readonly #size: { readonly width: number; readonly height: number }
  readonly #pages: { marks: Mark[]; drawings: Placed[] }[] = []
  readonly #isTrial: boolean
  #columns: Columns | null = null
  /** whether rows in columns are set a little closer, which saves a page */
  isClose = false
  y = HEAD

  /** With a height of its own, points, what is written is only tried: whether it fits, and how much it takes. */
  constructor(sheet: Sheet, options: PageOptions, tried: number | null = null) {
    this.#sheet = sheet
    this.options = options
    this.#size = paperSize(options.paper, sheet.across)
    this.width = this.#size.width - 2 * SIDE
    this.#isTrial = tried !== null
    this.bottom = tried === null ? this.#size.height - FOOT : HEAD + tried
    this.#addPage()
  }

  /** The same flow with nothing on it, to try how high something comes out, as wide as this one is now. */
  trial(height: number): Flow {
    const flow = new Flow(this.#sheet, this.options, height)
    flow.width = this.width
    flow.isClose = this.isClose
    return flow
  }

  get room(): number {
    return (this.#columns?.limit ?? this.bottom) - this.y
  }

  /** Height of an empty page. */
  get whole(): number {
    return this.bottom - this.top
  }

  /** Height of an empty page of the paper, also where something is only tried. */
  get page(): number {
    return this.#size.height - FOOT - HEAD
  }

  /** A length as this set prints it. */
  print(length: Ticks): string {
    const words = printLength(length)
    return this.options.metric === true ? metricText(words) : words
  }

  get isInColumns(): boolean {
    return this.#columns !== null
  }

  get isFresh(): boolean {
    return this.y <= (this.#columns?.top ?? this.top)
  }

  /** On to the next column, or to the next page where there is none. */
  newPage(): void {
    const columns = this.#columns
    if (columns === null) {
      this.#addPage()
      return
    }
    columns.deepest = Math.max(columns.deepest, this.y)
    columns.index += 1
    if (columns.index === columns.count) this.#addPage()
    else this.y = columns.top
    this.left = columns.left + columns.index * (this.width + COLUMN_GAP)
  }

  #addPage(): void {
    this.#pages.push({ marks: [], drawings: [] })
    this.y = this.top
    const columns = this.#columns
    if (columns === null) return
    const begun = columns.begun + 1
    Object.assign(columns, {
      index: 0,
      top: this.top,
      deepest: this.top,
      begun,
      limit: columns.tail?.page === begun ? this.top + columns.tail.height : null,
    } satisfies Partial<Columns>)
  }

  /** Begins a page, or a column, where less than so much is left of this one. */
  need(height: number): void {
    if (this.room >= height) return
    if (!this.isFresh) this.newPage()
    // the columns of a page that something stands on already are all as short as this one
    // and what does not fit in what is tried takes one page more
    else if (this.y > this.top || this.#isTrial) this.#nextPage()
  }

  #nextPage(): void {
    this.#addPage()
    this.left = this.#columns?.left ?? this.left
  }

  /** From here on in so many columns side by side, until they end. */
  beginColumns(count: number): void {
    this.#columns = {
      count,
      index: 0,
      left: this.left,
      whole: this.width,
      top: this.y,
      deepest: this.y,
      limit: null,
      begun: 0,
      tail: null,
    }
    this.width = columnWidth(this.width, count)
  }

  /** Ends the columns of this page after so many points. */
  limit(height: number): void {
    if (this.#columns !== null) this.#columns.limit = this.y + height
  }

  /** Ends the columns of a later page, by how many are begun before it, after so many points of it. */
  limitTail(page: number, height: number): void {
    if (this.#columns !== null) this.#columns.tail = { page, height }
  }

  /** On under the longest of the columns, as wide as before. */
  endColumns(): void {
    if (this.#columns === null) throw new Error('columns end that did not begin')
    const { left, whole, deepest } = this.#columns
    this.y = Math.max(this.y, deepest)
    this.left = left
    this.width = whole
    this.#columns = null
  }

  add(...marks: readonly Mark[]): void {
    this.#last().marks.push(...marks)
  }

  place(drawing: Placed): void {
    this.#last().drawings.push(drawing)
  }

  #last(): { marks: Mark[]; drawings: Placed[] } {
    const page = this.#pages.at(-1)
    if (page === undefined) throw new Error('a flow has a page from the start')
    return page
  }

  pages(about: About, from: number, of: number): readonly Page[] {
    const { id, title } = this.#sheet
    return this.#pages.map(({ marks, drawings }, index) => ({
      sheet: id,
      title,
      number: from + index,
      of,
      ...this.#size,
      marks: [...this.#head(about, index), ...marks, ...this.#foot(about, from + index, of)].map(rounded),
      drawings,
    }))
  }

  get count(): number {
    return this.#pages.length
  }

  #head(about: About, index: number): readonly Mark[] {
    const right = this.left + this.width
    const title = index === 0 ? this.#sheet.title : `${this.#sheet.title}, continued`
    const half = this.width / 2 - 10
    const logo = about.logo === null ? null : logoBox(about.logo, right)
    const edge = logo === null ? right : logo.x - LOGO_GAP
    const beside = half - (right - edge)
    const job = fitText(about.job, beside, 10, 'bold')
    const firm = fitText(about.firm, beside, 8.5)
    const taken = right - edge + Math.max(widthOf(job, 10, 'bold'), widthOf(firm, 8.5))
    const room = this.width - taken - 20
    return [
      textMark(this.left, 42, fitText(title, room, 16, 'bold'), { size: 16, weight: 'bold' }),
      textMark(edge, 34, job, { size: 10, weight: 'bold', anchor: 'end' }),
      textMark(edge, 46, firm, { size: 8.5, anchor: 'end', tone: 'soft' }),
      ...(logo === null ? [] : [{ kind: 'image', id: 'logo', ...logo } as const]),
      lineMark(this.left, 52, right, 52, { width: LINE.medium }),
    ]
  }

  #foot(about: About, number: number, of: number): readonly Mark[] {
    const right = this.left + this.width
    const y = this.#size.height - 32
    const date = about.date === '' ? 'date not stated' : about.date
    const size = 7.5
    const page = `Page ${number} of ${of} · ${PAPER_NAMES[this.options.paper]}`
    const prices = this.#sheet.audience === 'customer' ? about.pricesOf : about.prices
    const revision = fitText(about.revision, this.width / 3, size)
    const state = ` · revision ${revision} · ${fitText(date, this.width / 5, size)}`
    const room = this.width - widthOf(page, size, 'bold') - 20
    const job = fitText(about.job, room - widthOf(state, size), size)
    const lower = `${prices} · ${about.code} · Local code and the building official govern.`
    return [
      lineMark(this.left, y - 10, right, y - 10, { tone: 'soft' }),
      textMark(this.left, y, `${job}${state}`, { size }),
      textMark(right, y, page, { size, weight: 'bold', anchor: 'end' }),
      textMark(this.left, y + 10, fitText(lower, this.width, size), { size, tone: 'soft' }),
    ]
  }
}

/** As large as the head of a page has room for, its shape kept, against the right edge. */
function logoBox({ width, height }: Logo, right: number) {
  const scale = Math.min(LOGO_WIDE / width, LOGO_HIGH / height)
  const [w, h] = [round(width * scale), round(height * scale)]
  return { x: round(right - w), y: round(48 - h), w, h }
}

/** To 1/1000 point: far finer than any printer, and the same text on every machine. */
const round = (n: number): number => Math.round(n * 1000) / 1000

function rounded(mark: Mark): Mark {
  switch (mark.kind) {
    case 'text':
      return { ...mark, x: round(mark.x), y: round(mark.y), width: round(mark.width) }
    case 'image':
      return mark
    case 'line':
      return { ...mark, x1: round(mark.x1), y1: round(mark.y1), x2: round(mark.x2), y2: round(mark.y2) }
    case 'circle':
      return { ...mark, cx: round(mark.cx), cy: round(mark.cy), r: round(mark.r) }
    case 'path':
      return { ...mark, points: mark.points.map(([x, y]) => [round(x), round(y)] as const) }
  }
}
