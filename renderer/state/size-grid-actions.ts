import type { CompareRow, SizeGrid } from '../../core/compare/index.ts'
import { clearField, type JobStatement, setField } from '../../core/job/index.ts'
import { feet, printLength, TICKS_PER_FOOT, type Ticks, ticks } from '../../core/units/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import type { SessionParts } from './session-parts.ts'
import type { Stating } from './stating.ts'
import type { Tasks } from './tasks.ts'

/** Sizes beside the job's own on each side of it. */
const WIDTHS_EACH_WAY = 4
const DEPTHS_EACH_WAY = 4
const SMALLEST = feet(4)
const LARGEST = feet(60)

/** Sizes compared, around the one the job had when they were asked for. */
export interface SizeGridState {
  /** everything of the statement but the size: sizes of another deck are not shown as this one's */
  readonly key: string
  readonly grid: SizeGrid
  readonly rows: readonly CompareRow[]
  /** why it could not be filled */
  readonly failed: string | null
}

export interface SizeGridActions {
  /** compares the sizes around the job's own, or around the same one in other steps */
  compareSizes(step?: Ticks): Promise<void>
  closeSizes(): void
  /** a compared size becomes the job's, as one step */
  takeSize(row: Pick<CompareRow, 'width' | 'depth'>): void
}

/** Everything that a size's price hangs on but the size, as text. */
export function gridKey(statement: JobStatement): string {
  return JSON.stringify(['size.width', 'size.depth', 'pricing.budget'].reduce(clearField, statement))
}

/** A grid around a size: its own width and depth are among the steps, and no side leaves what a deck can be. */
export function gridAround({ width, depth }: Pick<CompareRow, 'width' | 'depth'>, step: Ticks): SizeGrid {
  const side = (own: Ticks, each: number) => {
    const below = Math.min(each, Math.floor((own - SMALLEST) / step))
    const above = Math.min(each, Math.floor((LARGEST - own) / step))
    return { from: ticks(own - below * step), to: ticks(own + above * step), step }
  }
  return { width: side(width, WIDTHS_EACH_WAY), depth: side(depth, DEPTHS_EACH_WAY) }
}

export function sizeGridActions(
  { client, get, set, watched, say }: SessionParts,
  { restate, stopTask }: Pick<Stating, 'restate'> & Pick<Tasks, 'stopTask'>,
): { readonly actions: SizeGridActions; dispose(): void } {
  let asked = 0
  const stopRows = client.on('sizes.row', ({ edit, row }) => {
    const { sizeGrid } = get()
    if (edit !== asked || sizeGrid === null) return
    set({ sizeGrid: { ...sizeGrid, rows: [...sizeGrid.rows, row] } })
  })

  return {
    dispose: stopRows,
    actions: {
      async compareSizes(step = ticks(TICKS_PER_FOOT)) {
        const { design, history, open } = get()
        if (!design) return
        asked += 1
        const edit = asked
        const grid = gridAround(design.job.size, step)
        const statement = history.present
        set({ sizeGrid: { key: gridKey(statement), grid, rows: [], failed: null } })
        try {
          await watched('size grid', (task) =>
            client.call('sizes.run', { edit, statement, jobId: open?.id, task, ...grid }),
          )
        } catch (error) {
          const { sizeGrid } = get()
          if (edit === asked && sizeGrid !== null)
            set({ sizeGrid: { ...sizeGrid, failed: sentenceOf(error) } })
        }
      },
      closeSizes() {
        asked += 1
        stopTask('size grid')
        set({ sizeGrid: null })
      },
      takeSize({ width, depth }) {
        const { history } = get()
        const as = `${printLength(width)} × ${printLength(depth)}`
        restate(
          setField(
            setField(history.present, 'size.width', printLength(width)),
            'size.depth',
            printLength(depth),
          ),
          `size ${as}`,
        )
        say(`The deck is ${as} now`)
      },
    },
  }
}
