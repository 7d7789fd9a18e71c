import { Popover } from '@mantine/core'
import { Layers, Maximize, Minus, Plus, RotateCw } from 'lucide-react'
import { ViewSwitch } from '../../parts/view-switch.tsx'
import { DRAWING_VIEWS, LAYER_GROUPS, VIEW_NAMES } from '../../state/drawing/look.ts'
import { WHOLE, ZOOM_STEP } from '../../state/drawing/view-window.ts'
import { useJob, useSession } from '../../state/session-context.ts'

/** How the deck is looked at: from where, what of it, and how large. */
export function DrawingBar({ zoom }: { readonly zoom: number }) {
  return (
    <div className="drawing-bar">
      <SeenAs />
      <LayersButton />
      <TurnButton />
      <Zoom zoom={zoom} />
    </div>
  )
}

const VIEWS = DRAWING_VIEWS.map((view) => ({ view, name: VIEW_NAMES[view] }))

function SeenAs() {
  const session = useSession()
  const view = useJob((state) => state.look.view)
  return <ViewSwitch legend="Seen as" views={VIEWS} view={view} onView={session.lookFrom} />
}

function LayersButton() {
  const session = useSession()
  const hidden = useJob((state) => state.look.hidden)
  return (
    <Popover position="bottom-start" withinPortal={false} trapFocus returnFocus shadow="md">
      <Popover.Target>
        <button type="button" className="button">
          <Layers size={15} aria-hidden="true" />
          Layers{hidden.length > 0 && `, ${hidden.length} hidden`}
        </button>
      </Popover.Target>
      <Popover.Dropdown>
        <fieldset className="layer-list">
          <legend>Shown in the drawing</legend>
          {LAYER_GROUPS.map(({ id, name }) => (
            <label key={id}>
              <input
                type="checkbox"
                checked={!hidden.includes(id)}
                onChange={(event) => session.showLayer(id, event.target.checked)}
              />
              {name}
            </label>
          ))}
        </fieldset>
      </Popover.Dropdown>
    </Popover>
  )
}

/** The solid view over the next corner. */
function TurnButton() {
  const session = useSession()
  const isSolid = useJob((state) => state.look.view === 'solid')
  if (!isSolid) return null
  return (
    <button
      type="button"
      className="button"
      onClick={() => session.turnSolid()}
      title="Over the next corner: arrow keys in the drawing, or drag it sideways"
    >
      <RotateCw size={14} aria-hidden="true" />
      Turn
    </button>
  )
}

function Zoom({ zoom }: { readonly zoom: number }) {
  const session = useSession()
  return (
    <div className="zoom" role="group" aria-label="Size of the drawing">
      <button
        type="button"
        className="button icon"
        aria-label="Smaller"
        title="Smaller: − in the drawing"
        disabled={zoom === 1}
        onClick={() => session.zoomBy(1 / ZOOM_STEP)}
      >
        <Minus size={15} aria-hidden="true" />
      </button>
      <span className="zoom-value">{Math.round(zoom * 100)} %</span>
      <button
        type="button"
        className="button icon"
        aria-label="Larger"
        title="Larger: + in the drawing"
        onClick={() => session.zoomBy(ZOOM_STEP)}
      >
        <Plus size={15} aria-hidden="true" />
      </button>
      <button
        type="button"
        className="button icon"
        aria-label="All of it"
        title="All of it: 0 in the drawing"
        disabled={zoom === 1}
        onClick={() => session.lookAt(WHOLE)}
      >
        <Maximize size={14} aria-hidden="true" />
      </button>
    </div>
  )
}
