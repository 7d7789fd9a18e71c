import type { SessionParts } from '../session-parts.ts'
import {
  DRAWING_VIEWS,
  type DrawingLook,
  type DrawingView,
  LAYER_GROUPS,
  type LayerGroup,
  TURNS,
  VIEW_NAMES,
} from './look.ts'
import { type ViewWindow, WHOLE, windowWithin } from './view-window.ts'

export interface DrawingActions {
  lookFrom(view: DrawingView): void
  /** the next way to look at the deck, after the last one the first */
  lookFromNext(): void
  /** the solid view over the next corner; back: over the one before */
  turnSolid(way?: 'on' | 'back'): void
  showLayer(id: LayerGroup, shown: boolean): void
  /** what part of the drawing is shown */
  lookAt(window: ViewWindow): void
  /** larger or smaller about the middle */
  zoomBy(factor: number): void
}

/** How the drawing is looked at; nothing of the job changes. */
export function drawingActions({ get, set, say }: Pick<SessionParts, 'get' | 'set' | 'say'>): DrawingActions {
  const change = (patch: Partial<DrawingLook>) => set({ look: { ...get().look, ...patch } })
  const lookAt = (window: ViewWindow) => {
    const { view, windows } = get().look
    change({ windows: { ...windows, [view]: windowWithin(window) } })
  }
  return {
    lookFrom: (view) => change({ view }),
    lookFromNext() {
      const next = DRAWING_VIEWS[(DRAWING_VIEWS.indexOf(get().look.view) + 1) % DRAWING_VIEWS.length]
      if (next === undefined) return
      change({ view: next })
      say(`Drawing: ${VIEW_NAMES[next]}`)
    },
    turnSolid(way = 'on') {
      const { turn } = get().look
      const next = (turn + (way === 'on' ? 1 : TURNS.length - 1)) % TURNS.length
      change({ view: 'solid', turn: TURNS[next] ?? 0 })
    },
    showLayer(id, shown) {
      const { hidden } = get().look
      change({
        hidden: LAYER_GROUPS.map((group) => group.id).filter((each) =>
          each === id ? !shown : hidden.includes(each),
        ),
      })
    },
    lookAt,
    zoomBy(factor) {
      const { view, windows } = get().look
      const window = windows[view] ?? WHOLE
      lookAt({ ...window, zoom: window.zoom * factor })
    },
  }
}
