import {
  type Grade,
  type LumberSize,
  lumberGrades,
  lumberSizes,
  lumberSpecies,
  lumberTreatments,
  type Species,
  type Treatment,
} from '../../data/index.ts'
import type { JointKind } from '../../frame/index.ts'
import { type Cents, cents, feet, type Ticks, ticks, type UnitPrice } from '../../units/index.ts'
import {
  choice,
  decimal,
  flag,
  length,
  list,
  money,
  named,
  object,
  optional,
  pricePerUnit,
  text,
} from './readers.ts'

/** The one version of price book files there is so far. */
export const BOOK_VERSION = 1

const jointKinds: readonly JointKind[] = ['beam ply', 'rim', 'ledger', 'decking']

interface SupplierEntry {
  readonly name: string
  readonly delivery: Cents | null
  readonly freeFrom: Cents | null
}

interface TermsEntry {
  readonly price: Cents
  readonly code: string
  readonly supply: number | null
  readonly pack: number | null
  readonly minimum: number | null
  readonly breaks: readonly { readonly from: number; readonly price: Cents }[]
  readonly date: string | null
}

interface StockOfferEntry extends TermsEntry {
  readonly supplier: string
}

interface StockEntry extends TermsEntry {
  readonly length: Ticks
  readonly supplier: string | null
  readonly offers: readonly StockOfferEntry[]
}

interface LumberEntry {
  readonly size: LumberSize
  readonly species: Species
  readonly grade: Grade
  readonly treatment: Treatment
  readonly useClass: string
  readonly code: string
  readonly substitutes: readonly string[]
  readonly stock: readonly StockEntry[]
}

interface GoodOfferEntry {
  readonly supplier: string
  readonly price: UnitPrice
  readonly pack: number
  readonly code: string
  readonly date: string | null
}

interface GoodEntry {
  readonly sku: string
  readonly label: string
  readonly unit: string
  readonly code: string
  readonly price: UnitPrice
  readonly pack: number
  readonly note: string
  readonly date: string | null
  readonly supplier: string | null
  readonly offers: readonly GoodOfferEntry[]
}

interface RateEntry {
  readonly id: string
  readonly label: string
  readonly unit: string
  readonly crewHours: number
  readonly workers: number
  readonly confidence: string
}

interface JointEntry {
  readonly kind: JointKind
  readonly sku: string
  readonly label: string
  readonly material: Cents
  readonly minutes: number
}

/** A price book as its file has it. */
export interface BookFile {
  readonly version: number
  readonly name: string
  readonly date: string
  readonly supplier: string
  readonly invented: boolean
  readonly suppliers: readonly SupplierEntry[]
  readonly labour: { readonly rate: Cents; readonly crew: number }
  readonly lumber: readonly LumberEntry[]
  readonly goods: readonly GoodEntry[]
  readonly rates: readonly RateEntry[]
  readonly joints: readonly JointEntry[]
}

const count = decimal(0, 1, 100_000)

const terms = {
  price: money(cents(1)),
  code: named,
  supply: optional<number | null>(decimal(0, 0, 100_000), null),
  pack: optional<number | null>(count, null),
  minimum: optional<number | null>(count, null),
  breaks: optional<TermsEntry['breaks']>(
    list(object<TermsEntry['breaks'][number]>({ from: decimal(0, 2, 100_000), price: money(cents(1)) })),
    [],
  ),
  date: optional<string | null>(named, null),
}

const stockEntry = object<StockEntry>({
  ...terms,
  length: length(ticks(1), feet(60)),
  supplier: optional<string | null>(text, null),
  offers: optional<readonly StockOfferEntry[]>(
    list(object<StockOfferEntry>({ ...terms, supplier: named })),
    [],
  ),
})

const supplierEntry = object<SupplierEntry>({
  name: named,
  delivery: optional<Cents | null>(money(cents(0)), null),
  freeFrom: optional<Cents | null>(money(cents(1)), null),
})

const lumberEntry = object<LumberEntry>({
  size: choice(lumberSizes),
  species: choice(lumberSpecies),
  grade: choice(lumberGrades),
  treatment: choice(lumberTreatments),
  useClass: optional(text, ''),
  code: named,
  substitutes: optional<readonly string[]>(list(named), []),
  stock: list(stockEntry),
})

const goodPack = optional(decimal(3, 0.001, 100_000), 1000)

const goodEntry = object<GoodEntry>({
  sku: named,
  label: named,
  unit: named,
  code: optional(text, ''),
  price: pricePerUnit,
  pack: goodPack,
  note: optional(text, ''),
  date: optional<string | null>(named, null),
  supplier: optional<string | null>(text, null),
  offers: optional<readonly GoodOfferEntry[]>(
    list(
      object<GoodOfferEntry>({
        supplier: named,
        price: pricePerUnit,
        pack: goodPack,
        code: optional(text, ''),
        date: optional<string | null>(named, null),
      }),
    ),
    [],
  ),
})

const rateEntry = object<RateEntry>({
  id: named,
  label: named,
  unit: named,
  crewHours: decimal(5, 0, 1000),
  workers: decimal(0, 1, 50),
  confidence: optional(text, 'not said'),
})

const jointEntry = object<JointEntry>({
  kind: choice(jointKinds),
  sku: named,
  label: named,
  material: money(cents(0)),
  minutes: decimal(0, 0, 600),
})

/** Reads the file's form; what the entries mean together is looked at afterwards. */
export const bookFile = object<BookFile>({
  version: decimal(0, 1, 1_000_000),
  name: named,
  date: named,
  supplier: optional(text, ''),
  invented: optional(flag, false),
  suppliers: optional<readonly SupplierEntry[]>(list(supplierEntry), []),
  labour: object<BookFile['labour']>({ rate: money(cents(0)), crew: decimal(0, 1, 50) }),
  lumber: list(lumberEntry),
  goods: list(goodEntry),
  rates: list(rateEntry),
  joints: list(jointEntry),
})
