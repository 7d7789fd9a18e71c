import type { CutJob, FixedPiece, RunGroup, StockOption } from '../cutting/index.ts'
import type { Frame, FrameRun, Member, ProductClass } from '../frame/index.ts'
import { type Job, namedRuns } from '../job/index.ts'
import type { Takeoff } from '../takeoff/index.ts'
import { type Cents, cents, ticks } from '../units/index.ts'
import { mitresOf, mitresOfRun } from './cut-mitres.ts'
import { allLeftOut, objectivesOf, type WishedStock, wishedStock } from './cut-wishes.ts'
import { jointCost } from './joint-cost.ts'
import { type OffcutsOnHand, offcutStock } from './offcut-stock.ts'
import { productKey, productName } from './product-name.ts'
import type { LumberProduct, PriceBook, PriceFault } from './types.ts'

/** What is to be cut from one product class, with the yard's code for it. */
export interface ClassToCut {
  readonly product: ProductClass
  readonly code: string
  /** what the yard may send instead */
  readonly substitutes: readonly string[]
  readonly useClass: string
  /** stock ids of the offcuts on hand that it may be cut from */
  readonly onHand: readonly string[]
  /** the supplier's code of stock whose id is another */
  readonly codes: { readonly [stockId: string]: string }
  readonly cutJob: CutJob
}

/** The part of a design that says what lumber is needed. */
export interface Needs {
  readonly job: Job
  readonly frame: Pick<Frame, 'members'>
  readonly takeoff: Pick<Takeoff, 'pieces' | 'runs'>
  /** its level caps are mitred at the deck's corners */
  readonly guard?: { readonly members: Frame['members'] } | null
}

/** What can be cut from the price book, and what it does not price. */
export interface CutJobs {
  readonly classes: readonly ClassToCut[]
  readonly faults: readonly PriceFault[]
}

/**
 * One cutting job per product class: its pieces and runs from the takeoff, lengths and prices from the price book,
 * kerf, trims and preferences from the job. Faults name every product and joint that the book does not price.
 * @param rack offcuts kept from other jobs, used where the job says so
 */
export function cutJobs(needs: Needs, book: PriceBook, rack: readonly OffcutsOnHand[] = []): CutJobs {
  const { job, takeoff } = needs
  const faults: PriceFault[] = []
  const held = new Set(namedRuns(job.cutting.onePiece, takeoff.runs).named.map((run) => run.id))
  // what climbs shares no cuts: beside stairs each piece is fitted where it goes
  const level = (needs.guard?.members ?? []).filter(
    ({ role, slope }) => (role === 'guard cap' || role === 'guard blocking') && slope === undefined,
  )
  const members = new Map([...needs.frame.members, ...level].map((member) => [member.id, member]))
  const classes = new Map<string, { product: ProductClass; pieces: FixedPiece[]; runs: RunGroup[] }>()
  const classOf = (product: ProductClass) => {
    const key = productKey(product)
    const found = classes.get(key) ?? { product, pieces: [], runs: [] }
    classes.set(key, found)
    return found
  }

  for (const { id, mark, memberId, length, finished, product, ends } of takeoff.pieces) {
    const wild = length > finished ? { wild: ticks(length - finished) } : {}
    // what is cut in place slants only then
    const cut = length === finished ? ends : undefined
    classOf(product).pieces.push({ id, mark, length, ...wild, ...mitresOf(members.get(memberId), cut) })
  }
  for (const run of takeoff.runs) {
    const cost = jointCost(run.kind, book, job.builder)
    const points = held.has(run.id) ? [] : run.points
    if (cost === null && points.length > 0) faults.push(missingJoint(run, book))
    classOf(run.product).runs.push(
      runGroup({ ...run, points }, members, cost?.total ?? cents(0), job.cutting.staggerPenalty),
    )
  }

  const toCut: ClassToCut[] = []
  for (const [key, { product, pieces, runs }] of classes) {
    const listed = book.lumber.find((entry) => productKey(entry.product) === key)
    if (listed === undefined || listed.stock.length === 0) {
      faults.push(missingProduct(product, listed, book))
      continue
    }
    const stock = wishedStock(listed, job, book)
    if (stock.length === 0) {
      faults.push(allLeftOut(product, listed))
      continue
    }
    const offcuts = job.cutting.useOffcuts ? offcutStock(rack, product) : []
    toCut.push({
      product,
      code: listed.code,
      substitutes: listed.substitutes,
      useClass: listed.useClass,
      onHand: offcuts.map((option) => option.id),
      codes: Object.fromEntries(
        stock.filter(({ id, code }) => id !== code).map(({ id, code }) => [id, code]),
      ),
      cutJob: {
        id: key,
        label: productName(product),
        kerf: job.cutting.kerf,
        endTrim: job.cutting.endTrim,
        stock: [...stock.map(stockOption), ...offcuts],
        pieces,
        runs,
        handling: job.cutting.handling,
        perCut: cents(0),
        keep: job.cutting.keepOffcutsFrom > 0 ? { from: job.cutting.keepOffcutsFrom, centsPerFoot: 0 } : null,
        objectives: objectivesOf(job),
      },
    })
  }
  return { classes: toCut, faults }
}

function stockOption(stock: WishedStock): StockOption {
  return {
    id: stock.id,
    length: stock.length,
    price: stock.price,
    supply: stock.supply ?? null,
    offcut: false,
    ...(stock.pack === undefined ? {} : { pack: stock.pack }),
    ...(stock.minimum === undefined ? {} : { minimum: stock.minimum }),
    ...(stock.breaks === undefined ? {} : { breaks: stock.breaks }),
  }
}

function runGroup(
  run: FrameRun,
  members: ReadonlyMap<string, Member>,
  jointPrice: Cents,
  staggerPenalty: Cents,
): RunGroup {
  return {
    id: run.id,
    label: run.label,
    members: run.memberIds.map((id) => ({ id, mark: members.get(id)?.mark ?? id })),
    length: ticks(run.length + (run.wild ?? 0)),
    ...(run.wild === undefined ? {} : { wild: run.wild }),
    ...mitresOfRun(run, members),
    points: run.points.map(({ at, label, cap = run.cap }) => ({
      at,
      label,
      cost: jointPrice,
      lap: run.lap ?? ticks(0),
      cap,
      excess: cap !== null && run.capPreferred ? staggerPenalty : null,
    })),
    ...(run.another === undefined ? {} : { another: run.another }),
    supports: run.supports,
    minSupports: run.minSupports,
    minPiece: run.minPiece,
    maxJoints: null,
    neighboursApart: run.neighboursApart,
  }
}

function missingProduct(
  product: ProductClass,
  listed: LumberProduct | undefined,
  book: PriceBook,
): PriceFault {
  const name = productName(product)
  const others = book.lumber
    .filter((entry) => entry.product.size === product.size)
    .map((e) => productName(e.product))
  const has = others.length > 0 ? `It has ${others.join('; ')}.` : `It lists no ${product.size} at all.`
  return {
    subject: name,
    message:
      listed === undefined
        ? `The price book "${book.name}" does not list ${name}. ${has}`
        : `The price book "${book.name}" lists ${name} but no length of it.`,
    fix:
      listed === undefined
        ? `Add ${name} with its lengths and prices to the price book, or choose a listed product.`
        : `Add at least one length and price of ${name} to the price book.`,
  }
}

function missingJoint(run: FrameRun, book: PriceBook): PriceFault {
  return {
    subject: `${run.kind} joint`,
    message: `The price book "${book.name}" does not say what a ${run.kind} joint costs.`,
    fix: `Add a "${run.kind}" entry under joints: its material and its minutes.`,
  }
}
