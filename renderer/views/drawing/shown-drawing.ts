import { useMemo } from 'react'
import type { Design } from '../../../core/estimate-types.ts'
import { allHoles } from '../../../core/ground/index.ts'
import {
  type Drawing,
  deckElevation,
  deckSection,
  footingLayout,
  framingPlan,
  type Layer,
  solidView,
  UPRIGHT_LAYERS,
} from '../../../core/papers/index.ts'
import { printLength } from '../../../core/units/index.ts'
import type { DrawingView } from '../../state/drawing/look.ts'
import { useJob } from '../../state/session-context.ts'
import type { Place } from '../../state/session-types.ts'

const ALL: readonly Layer[] = [
  'house',
  'decking',
  'footings',
  'joists',
  'beams',
  'posts',
  'stairs',
  'guard',
  'joints',
  'dimensions',
]

/** What the plan shows at each work place, from the lowest layer up. */
const PLAN_LAYERS: { readonly [place in Place]: readonly Layer[] } = {
  site: ALL,
  frame: [...ALL, 'marks'],
  ground: ['house', 'decking', 'dimensions', 'strings', 'footings', 'posts'],
  boards: ['house', 'joists', 'beams', 'joints', 'marks'],
  price: ALL,
  papers: [...ALL, 'marks'],
  'cut list': [],
  'price book': [],
}

export function layersOf(view: DrawingView, place: Place): readonly Layer[] {
  return view === 'plan' ? PLAN_LAYERS[place] : UPRIGHT_LAYERS
}

/** The deck as it is looked at: the same primitives that the papers print. Null while there is no deck. */
export function useShownDrawing(view: DrawingView, place: Place): Drawing | null {
  const design = useJob((state) => state.design)
  const turn = useJob((state) => state.look.turn)
  const bare = useJob((state) => state.drawing)
  const estimate = useJob((state) => (state.estimateEdit === state.designEdit ? state.estimate : null))
  return useMemo(() => {
    if (design === null) return null
    if (view === 'solid') return solidView(design, turn)
    if (view === 'section') return deckSection(design)
    if (view === 'front' || view === 'side') return deckElevation(design, view)
    if (place === 'ground') return footingLayout(design)
    return estimate ? framingPlan(estimate, estimate.plans) : bare
  }, [view, turn, place, design, estimate, bare])
}

/** What the drawing is, for whoever cannot see it. */
export function labelOf(view: DrawingView, place: Place, design: Design): string {
  const { job, frame } = design
  const { width, depth, height } = job.size
  const across = `${printLength(width)} along the house, ${printLength(depth)} deep`
  if (view === 'section')
    return `Section to scale, square to the house: ${printLength(depth)} deep, ${printLength(height)} high. Its members are listed beside it.`
  if (view === 'solid')
    return `The deck as it stands, seen from above: ${across}, ${printLength(height)} high. Its members are listed beside it.`
  if (view !== 'plan') {
    const from = view === 'front' ? 'from the yard' : 'from the left'
    return `Elevation to scale, seen ${from}: ${across}, ${printLength(height)} high. Its members are listed beside it.`
  }
  return place === 'ground'
    ? `Footing layout to scale: ${across}, ${allHoles(design).length} holes under the crossings of their strings. They are listed beside it.`
    : `Framing plan to scale: ${across}, ${frame.posts.length} posts. Its members are listed beside it.`
}
