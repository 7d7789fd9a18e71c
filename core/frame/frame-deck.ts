import type { Fault, Job } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import { fail, ok, type Result } from '../units/index.ts'
import { beamOf, framePlies } from './beams.ts'
import { frameBlocking } from './blocking.ts'
import { connectorsOf } from './connectors.ts'
import { frameDecking } from './decking.ts'
import { dimensionsOf } from './dimensions.ts'
import { footingFaults, movedPostFaults, postLengthFaults } from './field-faults.ts'
import { footingUnder } from './footings.ts'
import { allJoistCentres, innerJoistCentres } from './joist-centres.ts'
import { frameJoists, joistIds } from './joists.ts'
import { frameLedger, frameRims } from './ledger-and-rims.ts'
import { layoutNotes } from './notes.ts'
import { placePosts, postMember, withLength } from './posts.ts'
import { beamRun, deckingRun, joistLines, ledgerRun, rimRun } from './runs.ts'
import { diagonal } from './set-out.ts'
import type { Frame } from './types.ts'

/** Puts wood on a layout: every member, post, footing, connector and run, or the named faults that forbid it. */
export function frameDeck(job: Job, layout: Layout): Result<Frame, readonly Fault[]> {
  const d = dimensionsOf(job)
  const supports = layout.zones.flatMap((zone) => zone.supports)
  const centres = allJoistCentres(
    innerJoistCentres(d.width, job.frame.joists.spacing, d.joist.thickness, job.frame.joists.layoutFrom),
    d.width,
    d.joist.thickness,
  )
  const ids = joistIds(centres.length)

  let nextNumber = 1
  const placed = supports.flatMap((line) => {
    if (line.beam === null) return []
    const posts = placePosts(job, d, line, line.beam, nextNumber)
    nextNumber += posts.length
    return [{ line, beam: line.beam, posts }]
  })
  const faults = [
    ...footingFaults(job),
    ...movedPostFaults(
      job,
      placed.map((one) => one.posts),
    ),
    ...postLengthFaults(
      job,
      placed.flatMap((one) => one.posts),
    ),
  ]
  if (faults.length > 0) return fail(faults)

  const carried = placed.map(({ line, beam, posts: places }) => {
    const posts = places.map(withLength)
    const plies = framePlies(job, d, line, beam, posts)
    const blocking = frameBlocking(job, d, line, beam, centres)
    return { beam: beamOf(job, line, beam, plies, posts), posts, plies, blocking }
  })
  const posts = carried.flatMap((one) => one.posts)
  const beams = carried.map((one) => one.beam)
  const ledger = frameLedger(job, d)
  const joists = frameJoists(
    job,
    d,
    centres,
    supports.map((line) => line.id),
  )
  const rims = frameRims(job, d, ids)
  const decking = frameDecking(job, d, ids)
  const lines = joistLines(centres)
  const footings = posts.map((post) => footingUnder(job, post))

  return ok({
    members: [
      ...ledger,
      ...joists,
      ...rims,
      ...carried.flatMap((one) => one.plies),
      ...carried.flatMap((one) => one.blocking.blocks),
      ...posts.map((post) => postMember(job, d, post)),
      ...decking.members,
    ],
    beams,
    posts,
    footings,
    connectors: connectorsOf(job, joists, beams, posts),
    runs: [
      ...ledger.map((member) => ledgerRun(member, lines)),
      ...(['rear', 'front'] as const).flatMap((side) => {
        const plies = rims.filter((rim) => rim.id.startsWith(`rim-${side}`))
        return plies.length > 0 ? [rimRun(side, plies, lines, d.width)] : []
      }),
      ...carried.map((one) => beamRun(job, one.beam, one.plies, one.posts)),
      deckingRun(decking.members, lines, job.decking.overhang),
    ],
    joistCentres: centres,
    layoutNotes: layoutNotes(
      job,
      footings,
      posts,
      carried.map((one) => ({ beam: one.beam, leftOut: one.blocking.leftOut })),
      decking.short,
    ),
    longDiagonal: diagonal(d.width, d.depth),
  })
}
