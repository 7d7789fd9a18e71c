import { z } from 'zod'
import { cents, MAX_CENTS, MAX_TICKS, share, ticks } from '../../core/units/index.ts'

/** More boards than any deck has. */
const MOST_BOARDS = 5000

const board = z.int().min(1).max(MOST_BOARDS)
const boards = z.array(board).max(MOST_BOARDS)
const name = z.string().min(1).max(200)
const place = z.int().min(0).max(MAX_TICKS).transform(ticks)
const length = z.int().min(1).max(MAX_TICKS).transform(ticks)
const count = z.int().min(0).max(MOST_BOARDS)
const list = <Entry extends z.ZodType>(entry: Entry) => z.array(entry).max(MOST_BOARDS)

/** A day at the saw as the window states it; whether it can be of the plan is the core's matter. */
export const dayInput = z.strictObject({
  bought: z.union([z.literal('all'), boards]),
  sawn: list(z.strictObject({ board, pieces: z.union([z.literal('all'), list(name)]) })),
  miscuts: list(z.strictObject({ board, pieceId: name, length: length.nullable() })),
  culls: list(z.strictObject({ board, from: place, to: place })),
  yard: list(
    z.strictObject({
      stockId: name,
      left: count.nullable(),
      price: z.int().min(0).max(MAX_CENTS).transform(cents).nullable(),
    }),
  ),
  spares: list(z.strictObject({ stockId: name, count })),
  refund: z.int().min(0).max(10_000).transform(share),
})
