import { useCallback, useMemo } from 'react'
import { type Drawing, footingLayout, framingPlan, type Layer } from '../../core/papers/index.ts'
import { printLength } from '../../core/units/index.ts'
import type { Emphasis } from '../drawing/primitive.tsx'
import { Sheet } from '../drawing/sheet.tsx'
import { markOf } from '../state/figures.ts'
import { useJob, useSession } from '../state/session-context.ts'
import type { Place } from '../state/session-types.ts'
import { useThings } from '../state/use-derived.ts'
import { JointSpots } from './boards/joints/joint-spots.tsx'
import { ProvingDiagonals } from './ground/proving-diagonals.tsx'

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
const LAYERS: { readonly [place in Place]: readonly Layer[] } = {
  site: ALL,
  frame: [...ALL, 'marks'],
  ground: ['house', 'decking', 'dimensions', 'strings', 'footings', 'posts'],
  boards: ['house', 'joists', 'beams', 'joints', 'marks'],
  price: ALL,
  papers: [...ALL, 'marks'],
  'cut list': [],
}

/** The framing plan: the same deck at every work place, showing what matters there. */
export function Plan() {
  const session = useSession()
  const place = useJob((state) => state.place)
  const design = useJob((state) => state.design)
  const bare = useJob((state) => state.drawing)
  const estimate = useJob((state) => (state.estimateEdit === state.designEdit ? state.estimate : null))
  const faulty = useJob((state) => state.faults.length > 0)
  const selected = useJob((state) => state.selected)
  const hovered = useJob((state) => state.hovered)
  const things = useThings()

  const inGround = place === 'ground'
  const drawing = useMemo<Drawing | null>(() => {
    if (inGround) return design === null ? null : footingLayout(design)
    return estimate ? framingPlan(estimate, estimate.plans) : bare
  }, [inGround, design, estimate, bare])
  const known = useMemo(() => new Set(things.map((thing) => thing.id)), [things])
  const worst = useMemo(() => {
    const found = new Map<string, Emphasis>()
    for (const check of design?.checks ?? []) {
      const mark = markOf(check.status)
      if (mark !== 'fails') continue
      for (const id of check.subjects) found.set(id, 'fails')
    }
    return found
  }, [design])
  const emphasisOf = useCallback((id: string): Emphasis => worst.get(id) ?? 'none', [worst])
  const canChoose = useCallback((id: string) => known.has(id), [known])

  if (!drawing || !design) return null
  const { size } = design.job
  const across = `${printLength(size.width)} along the house, ${printLength(size.depth)} deep`
  const label = inGround
    ? `Footing layout to scale: ${across}, ${design.frame.footings.length} holes under the crossings of their strings. They are listed beside it.`
    : `Framing plan to scale: ${across}, ${design.frame.posts.length} posts. Its members are listed beside it.`
  return (
    <div className={faulty ? 'plan is-stale' : 'plan'}>
      <Sheet
        drawing={drawing}
        layers={LAYERS[place]}
        label={label}
        selected={selected}
        hovered={hovered}
        emphasisOf={emphasisOf}
        canChoose={canChoose}
        onSelect={session.select}
        onHover={session.hover}
        {...(place === 'boards' ? { overlay: (fit) => <JointSpots fit={fit} /> } : {})}
        {...(inGround
          ? {
              overlay: (fit) => <ProvingDiagonals fit={fit} design={design} chosen={selected} />,
            }
          : {})}
      />
    </div>
  )
}
