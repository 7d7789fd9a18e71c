import { dressedSizes, type LumberSize } from '../data/index.ts'
import {
  type AdjustedValues,
  adjustedValues,
  type BeamEnvelope,
  continuousEnvelope,
  isIncised,
  jointedEnvelope,
  type LineLoad,
  loadDuration,
  momentOfInertia,
  type Rectangle,
  rectangleOf,
  repetitiveFactor,
  worseEnvelope,
} from '../rules/index.ts'
import { toInches } from '../units/index.ts'
import type { BeamFacts, Measures } from './measures.ts'

/** A member in bending as it was reckoned: its section, its values, its loads, and the worst that they do. */
export interface Reckoned {
  readonly section: Rectangle
  readonly values: AdjustedValues
  /** lb per in */
  readonly line: LineLoad
  readonly envelope: BeamEnvelope
}

export interface ReckonedBeam extends Reckoned {
  readonly facts: BeamFacts
}

/**
 * Loads on their one path: decking, joists, ledger and beams, posts. Joists are continuous from the ledger's face to
 * the rim's outer face; a beam takes the greatest reaction of the joists all along, and is reckoned as continuous and
 * as jointed over every inner post, the worse counting. The beam's own weight is within the stated dead load.
 */
export interface LoadPath {
  /** one joist, where the deck has joists on two supports at least */
  readonly joist: Reckoned | null
  readonly beams: readonly ReckonedBeam[]
}

export function loadPath(context: Measures): LoadPath {
  const { job } = context
  const spacing = toInches(job.frame.joists.spacing)
  const first = context.spans[0]
  if (first === undefined) return { joist: null, beams: [] }
  const start = first.from.kind === 'ledger' ? first.from.y : 0
  const supports = [first.from, ...context.spans.map((span) => span.to)]
  const line = { dead: (job.site.deadLoad * spacing) / 144, live: (context.load * spacing) / 144 }
  const section = rectangleOf(job.frame.joists.size)
  const shared = repetitiveFactor(context.frame.joistCentres.length, spacing)
  const values = valuesOf(context, job.frame.joists.size, shared)
  const envelope = continuousEnvelope(
    {
      length: toInches(context.reach - start),
      supports: supports.map((one) => toInches(one.y - start)),
      stiffness: values.modulus * momentOfInertia(section),
    },
    line,
  )
  const beams = context.beams.flatMap((facts): ReckonedBeam[] => {
    const index = supports.findIndex((one) => one.beam === facts.beam.beam)
    const reaction = envelope.supports[index]
    if (reaction === undefined || facts.posts.length < 2) return []
    // joists that lift off a beam do not load it: see the check of uplift
    const live = Math.max(0, reaction.greatestLive / spacing)
    const dead = Math.max(0, reaction.greatest / spacing - live)
    return [reckonBeam(context, facts, { dead, live })]
  })
  return { joist: { section, values, line, envelope }, beams }
}

function reckonBeam(context: Measures, facts: BeamFacts, line: LineLoad): ReckonedBeam {
  const { beam, posts } = facts
  const section = rectangleOf(beam.size, beam.plies)
  // plies stand side by side: any spacing but theirs is no question
  const values = valuesOf(context, beam.size, repetitiveFactor(beam.plies, 0))
  const model = {
    length: toInches(beam.to - beam.from),
    supports: posts.map((post) => toInches(post.x - beam.from)),
    stiffness: values.modulus * momentOfInertia(section),
  }
  const envelope = worseEnvelope(continuousEnvelope(model, line), jointedEnvelope(model, line))
  return { facts, section, values, line, envelope }
}

/** Values of a member of the deck: No.2, wet, incised where its species takes treatment only so. */
export function valuesOf(context: Measures, size: LumberSize, repetitive: number): AdjustedValues {
  const { species, treatment } = context.job.frame
  return adjustedValues(size, species, {
    wet: true,
    incised: treatment === 'treated' && isIncised(species),
    duration: loadDuration(context.job.site.liveLoad, context.job.site.snowLoad),
    repetitive,
  })
}

/** Nominal depth over nominal breadth, as the rules for lateral support reckon it. */
export function nominalSlenderness(size: LumberSize, plies: number): number {
  const { nominalDepth, nominalThickness } = dressedSizes[size]
  return nominalDepth / (nominalThickness * plies)
}
