import type { Fault } from '../../job/index.ts'
import { fail, ok, type Result } from '../../units/index.ts'
import type { PriceBook, StockPrice } from '../types.ts'
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
      stock: stock.map(stockOf),
    })),
    goods: goods.map(({ date, supplier, ...good }) => ({ ...good, ...ownSource({ date, supplier }) })),
    labourRate: labour.rate,
    crewSize: labour.crew,
  }
}

function stockOf({
  length,
  price,
  code,
  supply,
  pack,
  minimum,
  date,
  supplier,
}: BookFile['lumber'][number]['stock'][number]): StockPrice {
  return {
    length,
    price,
    code,
    ...(supply === null ? {} : { supply }),
    ...(pack === null ? {} : { pack }),
    ...(minimum === null ? {} : { minimum }),
    ...ownSource({ date, supplier }),
  }
}

function ownSource({ date, supplier }: { readonly date: string | null; readonly supplier: string | null }) {
  return { ...(date === null ? {} : { date }), ...(supplier === null ? {} : { supplier }) }
}
