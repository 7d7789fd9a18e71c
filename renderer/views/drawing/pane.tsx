import { type KeyboardEvent, useCallback, useMemo, useRef } from 'react'
import type { Emphasis } from '../../drawing/primitive.tsx'
import { Sheet } from '../../drawing/sheet.tsx'
import { usePrinting } from '../../drawing/use-printing.ts'
import { useSheetPointer } from '../../drawing/use-sheet-pointer.ts'
import { useSize } from '../../drawing/use-size.ts'
import { useTurning } from '../../drawing/use-turning.ts'
import { useWheel } from '../../drawing/use-wheel.ts'
import { panned, type Stage, viewFit, zoomedAt } from '../../drawing/view-window.ts'
import { shownLayers } from '../../state/drawing/look.ts'
import { WHOLE, ZOOM_STEP, zoomWithin } from '../../state/drawing/view-window.ts'
import { markOf } from '../../state/figures.ts'
import { gripFor } from '../../state/grips/index.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { useGrips, useThings } from '../../state/use-derived.ts'
import { JointSpots } from '../boards/joints/joint-spots.tsx'
import { ProvingDiagonals } from '../ground/proving-diagonals.tsx'
import { DrawingBar } from './drawing-bar.tsx'
import { GripLine } from './grip-line.tsx'
import { Grips } from './grips.tsx'
import { HoverNote } from './hover-note.tsx'
import { labelOf, layersOf, useShownDrawing } from './shown-drawing.ts'
import { useGripMove } from './use-grip-move.ts'
import './pane.css'

const PAD = 25
/** Letter across without margins and head, in CSS px: what the drawing fills in print. */
const PAPER = { width: 960, height: 640 }
/** one press of an arrow key moves the drawing so far, px */
const PAN_STEP = 60

/** The deck in scale, as it is looked at: the same at every work place, showing what matters there. */
export function DrawingPane() {
  const session = useSession()
  const place = useJob((state) => state.place)
  const view = useJob((state) => state.look.view)
  const hidden = useJob((state) => state.look.hidden)
  const stored = useJob((state) => state.look.windows[state.look.view]) ?? WHOLE
  const design = useJob((state) => state.design)
  const faulty = useJob((state) => state.faults.length > 0)
  const selected = useJob((state) => state.selected)
  const hovered = useJob((state) => state.hovered)
  const heldGrip = useJob((state) => state.held?.grip ?? null)
  const things = useThings()
  const grips = useGrips()
  const drawing = useShownDrawing(view, place)
  const [room, onScreen] = useSize<HTMLDivElement>({ width: 800, height: 420 })
  const printing = usePrinting()
  const window = printing ? WHOLE : stored
  const { width, height } = printing ? PAPER : onScreen

  // while something is moved the drawing stands still, or what is drawn at would run away from the pointer
  const still = useRef<Stage['extent'] | null>(null)
  if (heldGrip === null) still.current = drawing
  const extent = still.current ?? drawing
  const stage = useMemo<Stage>(
    () => ({ extent: extent ?? { x0: 0, y0: 0, x1: 1, y1: 1 }, width, height, pad: PAD }),
    [extent, width, height],
  )
  const fit = useMemo(() => viewFit(stage, window), [stage, window])

  const known = useMemo(() => new Set(things.map((thing) => thing.id)), [things])
  const worst = useMemo(() => {
    const found = new Map<string, Emphasis>()
    for (const check of design?.checks ?? []) {
      if (markOf(check.status) !== 'fails') continue
      for (const id of check.subjects) found.set(id, 'fails')
    }
    return found
  }, [design])
  const plies = useMemo(
    () => new Set(design?.frame.beams.find(({ id }) => id === selected)?.plyIds ?? []),
    [design, selected],
  )
  const litIds = useJob((state) => state.lit)
  const lit = useMemo(() => {
    const beams = design?.frame.beams.filter(({ id }) => litIds.includes(id)) ?? []
    return new Set([...litIds, ...beams.flatMap(({ plyIds }) => plyIds)])
  }, [design, litIds])
  const emphasisOf = useCallback(
    (id: string): Emphasis =>
      plies.has(id) ? 'selected' : lit.has(id) ? 'hovered' : (worst.get(id) ?? 'none'),
    [plies, lit, worst],
  )
  const canChoose = useCallback((id: string) => known.has(id), [known])
  const layers = useMemo(() => shownLayers(layersOf(view, place), hidden), [view, place, hidden])

  const zoomAt = (factor: number, at: { readonly x: number; readonly y: number }) =>
    session.lookAt(zoomedAt(stage, window, zoomWithin(window.zoom * factor), at))
  const isSolid = view === 'solid'
  const turning = useTurning(session.turnSolid)
  const pan = (dx: number, dy: number) => {
    if (window.zoom > 1) session.lookAt(panned(stage, window, dx, dy))
  }
  const seek = (at: { readonly x: number; readonly y: number }) => {
    const { x0, x1, y0, y1 } = stage.extent
    session.lookAt({ ...window, x: (at.x - x0) / (x1 - x0), y: (at.y - y0) / (y1 - y0) })
  }
  const isMovable = view === 'plan' && place !== 'ground' && place !== 'boards'
  const move = useGripMove(fit.scale)
  const pointer = useSheetPointer({
    onHover: session.hover,
    onSelect(id) {
      session.letGo()
      session.select(id)
    },
    // what is shown whole has nowhere to be moved to: the solid drawing turns instead
    onPan: isSolid && window.zoom === 1 ? turning : pan,
    onZoom: zoomAt,
    onTake(id) {
      const grip = isMovable && design ? gripFor(id, grips, design) : null
      if (grip) move.take(grip)
      return grip !== null
    },
    onDraw: move.draw,
    onLetGo: session.letGo,
    onGiveUp: session.giveUpMove,
  })
  useWheel(room, window.zoom > 1, zoomAt)

  if (!drawing || !design) return null
  const grip = isMovable ? gripFor(selected, grips, design) : null

  function onKeyDown(event: KeyboardEvent<HTMLDivElement>) {
    if (event.ctrlKey || event.metaKey) return
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key]
    const [x = 0, y = 0] = way ?? []
    if (event.key === 'Escape' && session.store.getState().held !== null) {
      session.giveUpMove()
      event.stopPropagation()
    } else if (event.key === 'Enter' && session.store.getState().held !== null) {
      session.letGo()
      event.preventDefault()
    } else if (way !== undefined && grip !== null) {
      move.nudge(grip, { x, y }, event.shiftKey ? 4 : 1, event.altKey)
      event.preventDefault()
    } else if (x !== 0 && isSolid && window.zoom === 1) {
      session.turnSolid(x > 0 ? 'on' : 'back')
      event.preventDefault()
    } else if (way !== undefined) {
      pan(-x * PAN_STEP, -y * PAN_STEP)
      event.preventDefault()
    } else if (event.key === '+' || event.key === '=') session.zoomBy(ZOOM_STEP)
    else if (event.key === '-') session.zoomBy(1 / ZOOM_STEP)
    else if (event.key === '0') session.lookAt(WHOLE)
  }

  return (
    <div className={faulty ? 'plan is-stale' : 'plan'}>
      <DrawingBar zoom={window.zoom} />
      <div
        className={window.zoom > 1 ? 'stage is-larger' : 'stage'}
        ref={room}
        id="drawing"
        tabIndex={0}
        role="group"
        aria-label="Drawing"
        aria-describedby="drawing-keys"
        onKeyDown={onKeyDown}
        onBlur={session.letGo}
      >
        <Sheet
          drawing={drawing}
          layers={layers}
          isSolid={isSolid}
          label={labelOf(view, place, design)}
          fit={fit}
          width={width}
          height={height}
          selected={selected}
          hovered={hovered}
          emphasisOf={emphasisOf}
          canChoose={canChoose}
          pointer={pointer}
          overlay={(at) => (
            <>
              {isMovable && <GripLine fit={at} grip={grip} />}
              {view === 'plan' && place === 'boards' && <JointSpots fit={at} />}
              {view === 'plan' && place === 'ground' && (
                <ProvingDiagonals fit={at} design={design} chosen={selected} />
              )}
            </>
          )}
        />
        <HoverNote />
        {isMovable && (
          <Grips
            grips={grips}
            chosen={grip}
            fit={fit}
            width={width}
            height={height}
            move={move}
            onSeek={seek}
          />
        )}
        <span id="drawing-keys" className="unseen">
          Plus and minus make it larger and smaller, 0 shows all of it, arrow keys move it; with an edge, a
          beam or a post chosen they move that. The solid drawing, while all of it is shown, turns by the left
          and right arrows or by being dragged sideways.
        </span>
      </div>
    </div>
  )
}
