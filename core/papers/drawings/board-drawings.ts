import { type Board, type CutPlan, edgesOf } from '../../cutting/index.ts'
import { inches, printLength, ticks, toFeet } from '../../units/index.ts'
import type { Drawing, Primitive } from '../types.ts'
import { drawingOf } from './shapes.ts'

/** Height of a drawn board and the distance from one to the next; a board's width says nothing here. */
const HEIGHT = inches(5)
const PITCH = inches(9)
const LABEL = inches(30)

/** Each board of a cutting plan with its pieces where they are cut, marked, and its offcut; one below the other. */
export function boardDrawing(label: string, plan: CutPlan): Drawing {
  const primitives = plan.boards.flatMap((board, row) => boardAt(board, row * PITCH))
  return drawingOf(`boards-${plan.jobId}`, `Boards: ${label}`, primitives, inches(3))
}

function boardAt(board: Board, y: number): readonly Primitive[] {
  const id = `board-${board.number}`
  const middle = y + HEIGHT / 2
  return [
    {
      kind: 'text',
      id,
      layer: 'marks',
      x: -LABEL / 8,
      y: middle,
      text: `${board.number} · ${toFeet(board.length)} ft`,
      anchor: 'end',
      size: 'small',
    },
    {
      kind: 'rect',
      id,
      layer: 'joists',
      x: 0,
      y,
      w: board.length,
      h: HEIGHT,
      weight: 'fine',
      stroke: 'solid',
      fill: 'none',
    },
    ...board.cuts.flatMap((cut): readonly Primitive[] => [
      pieceAt(cut, y),
      {
        kind: 'text',
        id: cut.pieceId,
        layer: 'marks',
        x: (cut.from + cut.to) / 2,
        y: middle,
        text: cut.to - cut.from < LABEL ? cut.mark : `${cut.mark} ${printLength(cut.length)}`,
        anchor: 'middle',
        size: 'small',
      },
    ]),
    ...offcut(board, id, middle),
  ]
}

/** A piece as it lies, the far edge on top. */
function pieceAt(cut: Board['cuts'][number], y: number): Primitive {
  const look = { layer: 'joists', weight: 'medium', stroke: 'solid', fill: 'wood' } as const
  const id = cut.pieceId
  if (cut.mitres === undefined)
    return { kind: 'rect', id, ...look, x: cut.from, y, w: cut.to - cut.from, h: HEIGHT }
  const { near, far } = edgesOf(cut)
  const points = [
    { x: far[0], y },
    { x: far[1], y },
    { x: near[1], y: y + HEIGHT },
    { x: near[0], y: y + HEIGHT },
  ]
  return { kind: 'polygon', id, ...look, points }
}

function offcut(board: Board, id: string, middle: number): readonly Primitive[] {
  const end = board.cuts.at(-1)?.to ?? 0
  if (board.offcut < LABEL) return []
  return [
    {
      kind: 'text',
      id,
      layer: 'marks',
      x: (end + board.length) / 2,
      y: middle,
      text: printLength(ticks(board.offcut)),
      anchor: 'middle',
      size: 'small',
    },
  ]
}
