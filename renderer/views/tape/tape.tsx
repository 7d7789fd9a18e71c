import { type CSSProperties, type KeyboardEvent, type PointerEvent, useMemo, useRef, useState } from 'react'
import { bestNeighbours } from '../../../core/compare/index.ts'
import type { FieldSpec, Job } from '../../../core/job/index.ts'
import type { PriceBook } from '../../../core/pricing/index.ts'
import { inches, printLength, type Ticks, ticks } from '../../../core/units/index.ts'
import { useSize } from '../../drawing/use-size.ts'
import { nudged } from '../../state/field-value.ts'
import { plural } from '../../state/print.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { TAPE_STEP, WIDTH } from '../../state/tape-range.ts'
import { useField } from '../bench/use-field.ts'
import { Curve } from './curve.tsx'
import { neighbourText } from './neighbour-text.ts'
import { Ruler } from './ruler.tsx'
import { stockLengths, stockMarks } from './stock-marks.ts'
import { CURVE, curveAt, moneyScale, type TapeScale, widthAt, xOf, yOf } from './tape-scale.ts'
import './tape.css'

const SIDE = 46
const FINE_STEP = inches(1)

/** room of a label over and under its point, px */
const LABEL = { over: 28, under: 27 } as const

/**
 * A label stands clear of the curve, which falls with the width: under it on the side of the narrower widths, over it on
 * the other, unless there is no room for it there.
 */
function labelTop(y: number, isNarrower: boolean): number {
  const under = isNarrower ? y + LABEL.under <= CURVE.bottom + 10 : y - LABEL.over < CURVE.top - 10
  return under ? y + 7 : y - LABEL.over
}

/** Width and its price: the tape under the plan, dragged or typed into, with the price per square foot along it. */
export function Tape({
  spec,
  job,
  book,
}: {
  readonly spec: FieldSpec
  readonly job: Job
  readonly book: PriceBook | null
}) {
  const session = useSession()
  const field = useField(spec)
  const tape = useJob((state) => state.tape)
  const totals = useJob((state) => state.estimate?.pricing?.totals ?? null)
  const whole = useJob((state) => state.estimate?.fit.fitsStock ?? false)
  const fresh = useJob((state) => state.estimateEdit === state.edit)
  const [room, { width: wide }] = useSize<HTMLDivElement>({ width: 900, height: 160 })
  const dragging = useRef(false)
  const [held, setHeld] = useState(false)

  const scale: TapeScale = { from: tape.from, to: tape.to, left: SIDE, right: wide - 22 }
  const { width, depth } = job.size
  const basis = job.builder === 'owner' ? 'cost' : 'price'
  const money = useMemo(
    () =>
      moneyScale(
        [...tape.rows, ...(tape.running ? tape.earlier : [])]
          .filter((row) => row.fault === null)
          .map((row) => row.perSquareFoot),
      ),
    [tape],
  )
  const level = fresh && totals ? totals.perSquareFoot : curveAt(tape.rows, TAPE_STEP, width)
  const marks = useMemo(
    () => stockMarks(tape.rows, book ? stockLengths(book, job) : []),
    [tape.rows, book, job],
  )
  const named = useMemo(() => {
    if (!fresh || !totals) return []
    const here = { width, depth, amount: totals[basis], basis } as const
    const own = { width, perSquareFoot: totals.perSquareFoot, fitsStock: whole }
    return bestNeighbours(tape.rows, own).map((row) => ({ ...row, ...neighbourText(row, here) }))
  }, [fresh, totals, width, depth, basis, whole, tape.rows])

  if (tape.to <= tape.from) return <div className="tape tape-waiting" aria-busy="true" />
  const x = Math.min(scale.right, Math.max(scale.left, xOf(scale, width)))

  function drag(event: PointerEvent<Element>) {
    const box = room.current?.getBoundingClientRect()
    if (!box) return
    const next = widthAt(scale, event.clientX - box.left, event.altKey ? FINE_STEP : TAPE_STEP)
    set(ticks(Math.min(spec.max ?? next, Math.max(spec.min ?? next, next))))
  }

  function set(next: Ticks) {
    session.dropDraft(WIDTH)
    if (next !== width || held)
      session.stateLive(WIDTH, printLength(next), `${spec.label} ${printLength(next)}`)
  }

  function grab(event: PointerEvent<Element>) {
    if (event.button !== 0) return
    event.currentTarget.setPointerCapture(event.pointerId)
    dragging.current = true
    setHeld(true)
    drag(event)
  }

  function letGo() {
    if (!dragging.current) return
    dragging.current = false
    setHeld(false)
    session.endGesture()
  }

  function onKeyDown(event: KeyboardEvent) {
    const steps = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 4, PageDown: -4 }[
      event.key
    ]
    if (event.key === 'Escape' && dragging.current) {
      dragging.current = false
      setHeld(false)
      session.giveUpGesture()
      event.stopPropagation()
    } else if (steps !== undefined) {
      event.preventDefault()
      set(ticks(nudged(spec, width, steps)))
    } else if (event.key === 'Enter') {
      session.endGesture()
    }
  }

  return (
    <section className={fresh ? 'tape' : 'tape is-stale'} aria-label="Width and its price" ref={room}>
      <p className="tape-title" style={besideFlag(x, wide)}>
        {basis} per square foot along the width
        {tape.running && (
          <span className="tape-state">
            {' '}
            · filling in, {plural(tape.rows.length, 'width')} so far{' '}
            <button type="button" className="link" onClick={() => session.stopTask('widths')}>
              Stop here
            </button>
          </span>
        )}
        {tape.stopped && (
          <span className="tape-state">
            {' '}
            · stopped after {plural(tape.rows.length, 'width')}; the next edit goes on
          </span>
        )}
        {tape.failed !== null && <span className="tape-state tape-failed"> · ▲ {tape.failed}</span>}
      </p>
      <svg width={wide} height={158} aria-hidden="true">
        {money && (
          <Curve
            rows={tape.rows}
            scale={scale}
            money={money}
            here={{ width, level }}
            earlier={tape.running ? tape.earlier : []}
            neighbours={named}
          />
        )}
        <Ruler
          scale={scale}
          rows={tape.rows}
          dots={marks.dots}
          rings={marks.rings}
          onPointerDown={grab}
          onPointerMove={(event) => dragging.current && drag(event)}
          onPointerUp={letGo}
        />
        <line className="tape-hand" x1={x} x2={x} y1={24} y2={134} />
      </svg>
      <div
        className={held ? 'tape-grip is-held' : 'tape-grip'}
        style={{ left: x }}
        role="slider"
        tabIndex={0}
        aria-label="Width, by dragging"
        aria-valuemin={tape.from}
        aria-valuemax={tape.to}
        aria-valuenow={width}
        aria-valuetext={printLength(width)}
        title="Drag for 6 in steps, with Alt for 1 in; arrow keys too"
        onPointerDown={grab}
        onPointerMove={(event) => dragging.current && drag(event)}
        onPointerUp={letGo}
        onKeyDown={onKeyDown}
        onBlur={() => session.endGesture()}
      />
      <input
        className="tape-flag"
        style={{ left: Math.min(wide - 58, Math.max(58, x)) }}
        aria-label="Width"
        value={field.text}
        aria-invalid={field.fault !== null}
        aria-describedby={field.fault === null ? undefined : 'tape-fault'}
        spellCheck={false}
        autoComplete="off"
        onFocus={(event) => event.target.select()}
        onChange={(event) => field.onText(event.target.value)}
        onBlur={field.onCommit}
        onKeyDown={(event) => {
          if (event.key === 'Enter') field.onCommit()
          else if (event.key === 'Escape') field.onGiveUp()
          else if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
            event.preventDefault()
            field.onNudge(event.key === 'ArrowUp' ? 1 : -1)
          }
        }}
      />
      {field.fault !== null && (
        <p id="tape-fault" className="tape-fault" style={{ left: Math.min(wide - 170, Math.max(170, x)) }}>
          ▲ {field.fault}
        </p>
      )}
      {field.note !== '' && field.fault === null && (
        <p className="tape-note" role="status" style={{ left: Math.min(wide - 170, Math.max(170, x)) }}>
          {field.note}
        </p>
      )}
      {named.map((each) => (
        <button
          key={each.width}
          type="button"
          className={`tape-neighbour${each.saves ? ' saves' : ''} ${each.width < width ? 'before' : 'after'}`}
          style={{
            ...(each.width < width
              ? { right: wide - xOf(scale, each.width) - 4 }
              : { left: xOf(scale, each.width) - 4 }),
            top: labelTop(money ? yOf(money, each.perSquareFoot) : CURVE.top, each.width < width),
          }}
          title={`Make the deck ${printLength(each.width)} wide`}
          onClick={() =>
            session.state(WIDTH, printLength(each.width), `${spec.label} ${printLength(each.width)}`)
          }
        >
          {each.text}
        </button>
      ))}
    </section>
  )
}

/** Half the flag with the width on it, and some air. */
const HALF_FLAG = 60
const MARGIN = 46

/** The title stands on the side of the flag that has more room. */
function besideFlag(x: number, wide: number): CSSProperties {
  const [side, room] = x < wide / 2 ? (['right', wide - x] as const) : (['left', x] as const)
  return { [side]: MARGIN, maxWidth: room - HALF_FLAG - MARGIN }
}
