import type { Layer, Turn } from '../../../core/papers/index.ts'
import type { ViewWindow } from './view-window.ts'

/** Ways to look at the deck, in the order of their switch. */
export const DRAWING_VIEWS = ['plan', 'section', 'front', 'side', 'solid'] as const
export type DrawingView = (typeof DRAWING_VIEWS)[number]

export const VIEW_NAMES: { readonly [view in DrawingView]: string } = {
  plan: 'Plan',
  section: 'Section',
  front: 'Front',
  side: 'Side',
  solid: 'Solid',
}

/** Layers that are shown or hidden together, as they are called. */
export const LAYER_GROUPS = [
  { id: 'decking', name: 'Decking', layers: ['decking'] },
  { id: 'joists', name: 'Joists, ledger and rims', layers: ['joists', 'joints'] },
  { id: 'beams', name: 'Beams and posts', layers: ['beams', 'posts'] },
  { id: 'footings', name: 'Footings', layers: ['footings'] },
  { id: 'stairs', name: 'Guard and stairs', layers: ['stairs', 'guard'] },
  { id: 'dimensions', name: 'Dimensions', layers: ['dimensions'] },
  { id: 'marks', name: 'Marks', layers: ['marks'] },
] as const satisfies readonly {
  readonly id: string
  readonly name: string
  readonly layers: readonly Layer[]
}[]
export type LayerGroup = (typeof LAYER_GROUPS)[number]['id']

/** Quarter turns, in the order of the button. */
export const TURNS: readonly Turn[] = [0, 1, 2, 3]

/** How the drawing is looked at; nothing of the job. */
export interface DrawingLook {
  readonly view: DrawingView
  readonly hidden: readonly LayerGroup[]
  /** the corner over which the solid view looks */
  readonly turn: Turn
  readonly windows: { readonly [view in DrawingView]?: ViewWindow }
}

export const FIRST_LOOK: DrawingLook = { view: 'plan', hidden: [], turn: 0, windows: {} }

/** Of some layers those that are not hidden. */
export function shownLayers(layers: readonly Layer[], hidden: readonly LayerGroup[]): readonly Layer[] {
  const gone = new Set<Layer>(LAYER_GROUPS.flatMap(({ id, layers: own }) => (hidden.includes(id) ? own : [])))
  return layers.filter((layer) => !gone.has(layer))
}

/** What of a look is kept until the next start, as text; where it was zoomed to is not. */
export function printLook({ view, hidden, turn }: DrawingLook): string {
  return JSON.stringify({ view, hidden, turn })
}

/** A kept look; anything in it that is not known is left at its first state. */
export function readLook(text: string | null): DrawingLook {
  const kept = asObject(text)
  const view = DRAWING_VIEWS.find((each) => each === kept.view) ?? FIRST_LOOK.view
  const stated: readonly unknown[] = Array.isArray(kept.hidden) ? kept.hidden : []
  const hidden = LAYER_GROUPS.map(({ id }) => id).filter((id) => stated.includes(id))
  const turn = TURNS.find((each) => each === kept.turn) ?? 0
  return { ...FIRST_LOOK, view, hidden, turn }
}

function asObject(text: string | null): { readonly [key: string]: unknown } {
  try {
    const value: unknown = JSON.parse(text ?? '{}')
    return typeof value === 'object' && value !== null ? { ...value } : {}
  } catch {
    return {}
  }
}
