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
import type { JoistMeasures } from './joist-measures.ts'
import { alongBeam, type BeamFacts, type Measures } from './measures.ts'

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

/** One joist of a group, continuous from where its load begins, with what carries it. */
export interface ReckonedJoist extends Reckoned {
  readonly group: JoistMeasures
}

/**
 * Loads on their one path: decking, joists, ledger and beams, posts. Joists are continuous from the ledger's face to
 * the rim's outer face; a beam takes the greatest reaction of the joists all along, and is reckoned as continuous and
 * as jointed over every inner post, the worse counting. The beam's own weight is within the stated dead load.
 */
export interface LoadPath {
  /** a joist of every group on two supports at least, in the order of the groups */
  readonly joists: readonly ReckonedJoist[]
  readonly beams: readonly ReckonedBeam[]
}

/** @param joists as reckoned, where they are known */
export function loadPath(context: Measures, joists = reckonedJoists(context)): LoadPath {
  const beams = context.beams.flatMap((facts): ReckonedBeam[] => {
    const line = lineLoadOn(context, facts, joists)
    return line === null || facts.posts.length < 2 ? [] : [reckonBeam(context, facts, line)]
  })
  return { joists, beams }
}

function reckonedJoists(context: Measures): readonly ReckonedJoist[] {
  return context.groups.flatMap((group) => (group.spans.length === 0 ? [] : [reckonJoist(context, group)]))
}

function reckonJoist(context: Measures, group: JoistMeasures): ReckonedJoist {
  const { job } = context
  const spacing = toInches(job.frame.joists.spacing)
  const line = { dead: (job.site.deadLoad * spacing) / 144, live: (context.load * spacing) / 144 }
  const section = rectangleOf(job.frame.joists.size)
  const shared = repetitiveFactor(group.memberIds.length, spacing)
  const values = valuesOf(context, job.frame.joists.size, shared)
  const envelope = continuousEnvelope(
    {
      length: toInches(group.line.length),
      supports: group.line.supports.map((at) => toInches(at)),
      stiffness: values.modulus * momentOfInertia(section),
    },
    line,
  )
  return { group, section, values, line, envelope }
}

/**
 * Load along a beam, lb per in: the greatest reaction of the joists of a zone, and where those of two zones end on it,
 * that of both. Null where no joist lies on it.
 */
function lineLoadOn(
  context: Measures,
  { beam }: BeamFacts,
  joists: readonly ReckonedJoist[],
): LineLoad | null {
  const spacing = toInches(context.job.frame.joists.spacing)
  const brought = joists.flatMap(({ group, envelope }) =>
    group.supports.flatMap((support, i) => {
      const reaction = envelope.supports[i]
      if (support.id !== beam.id || reaction === undefined) return []
      // joists that lift off a beam do not load it: see the check of uplift
      const live = Math.max(0, reaction.greatestLive / spacing)
      const dead = Math.max(0, reaction.greatest / spacing - live)
      const share = alongBeam(support)
      return [{ zone: group.zone, dead: dead * share, live: live * share }]
    }),
  )
  const zones = [...new Set(brought.map(({ zone }) => zone))]
  if (zones.length === 0) return null
  const sum = (of: (one: LineLoad) => number) =>
    zones.reduce((all, zone) => all + Math.max(...brought.filter((one) => one.zone === zone).map(of)), 0)
  // joists load a flush beam from its face; what lies on the beam itself it carries too
  const own = beam.flush ? rectangleOf(beam.size, beam.plies).breadth / 144 : 0
  return {
    dead: sum(({ dead }) => dead) + own * context.job.site.deadLoad,
    live: sum(({ live }) => live) + own * context.load,
  }
}

/** The greatest that beams bring to a post: that of both where it stands under the mitre of two, lb. */
export function reactionOn({ beams }: LoadPath, postId: string): number | null {
  const reactions = beams.flatMap(({ facts, envelope }) => {
    const reaction = envelope.supports[facts.posts.findIndex((post) => post.id === postId)]
    return reaction === undefined ? [] : [reaction.greatest]
  })
  return reactions.length === 0 ? null : reactions.reduce((sum, one) => sum + one, 0)
}

function reckonBeam(context: Measures, facts: BeamFacts, line: LineLoad): ReckonedBeam {
  const { beam } = facts
  const section = rectangleOf(beam.size, beam.plies)
  // plies stand side by side: any spacing but theirs is no question
  const values = valuesOf(context, beam.size, repetitiveFactor(beam.plies, 0))
  const model = {
    length: toInches(beam.length),
    supports: beam.postsAt.map((at) => toInches(at)),
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
