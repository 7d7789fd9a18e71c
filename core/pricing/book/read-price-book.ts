import type { Fault } from '../../job/index.ts'
import { fail, ok, type Result } from '../../units/index.ts'
import type { GoodOffer, PriceBook, StockTerms } from '../types.ts'
import { crossChecks } from './cross-checks.ts'
import { type BookFile, bookFile } from './file-form.ts'

/** Reads a price book from a parsed file, or lists everything that is wrong with it, each by its path. */
export function readPriceBook(value: unknown): Result<PriceBook, readonly Fault[]> {
  const faults: Fault[] = []
  const file = bookFile(value, '', faults)
  if (file !== null) crossChecks(file, faults)
  return file === null || faults.length > 0 ? fail(faults) : ok(bookOf(file))
}

function bookOf(file: BookFile): PriceBook {
  const { labour, lumber, goods, ...rest } = file
  return {
    ...rest,
    lumber: lumber.map(({ size, species, grade, treatment, stock, ...entry }) => ({
      ...entry,
      product: { size, species, grade, treatment },
      stock: stock.map(({ length, supplier, offers, ...terms }) => ({
        length,
        ...termsOf(terms),
        ...(supplier === null ? {} : { supplier }),
        ...(offers.length === 0
          ? {}
          : { offers: offers.map((offer) => ({ supplier: offer.supplier, ...termsOf(offer) })) }),
      })),
    })),
    goods: goods.map(({ date, supplier, offers, ...good }) => ({
      ...good,
      ...(date === null ? {} : { date }),
      ...(supplier === null ? {} : { supplier }),
      ...(offers.length === 0 ? {} : { offers: offers.map(goodOffer) }),
    })),
    labourRate: labour.rate,
    crewSize: labour.crew,
  }
}

function termsOf({
  price,
  code,
  supply,
  pack,
  minimum,
  breaks,
  date,
}: Omit<BookFile['lumber'][number]['stock'][number], 'length' | 'supplier' | 'offers'>): StockTerms & {
  readonly date?: string
} {
  return {
    price,
    code,
    ...(supply === null ? {} : { supply }),
    ...(pack === null ? {} : { pack }),
    ...(minimum === null ? {} : { minimum }),
    ...(breaks.length === 0 ? {} : { breaks }),
    ...(date === null ? {} : { date }),
  }
}

function goodOffer({ date, ...offer }: BookFile['goods'][number]['offers'][number]): GoodOffer {
  return { ...offer, ...(date === null ? {} : { date }) }
}
