import { IRC_LIMITS, poundsPerFoot } from '../data/index.ts'
import type { Role } from '../frame/index.ts'
import { toFeet } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit } from './finding.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'

/** What rests on the joists and beams; ledger, beams and posts carry themselves elsewhere. */
const CARRIED: readonly Role[] = [
  'joist',
  'end joist',
  'rim',
  'header',
  'hip',
  'blocking',
  'decking',
  'fascia',
]

/**
 * Weight of the deck's own lumber, dried in use, against the dead load that the job states. What it weighs fresh from
 * treatment is told as well: it dries, and is not there with a crowd for long.
 */
export function checkDeadLoad(context: CheckContext): Check {
  const { job, layout } = context
  const stated = job.site.deadLoad
  const dry = weightOf(context, 'seasoned')
  const fresh = weightOf(context, job.frame.treatment === 'treated' ? 'freshlyTreated' : 'seasoned')
  const found = byLimit(IRC_LIMITS.deadLoad, { value: dry, unit: 'psf' }, { value: stated, unit: 'psf' }, [
    `Joists, rims, blocking and decking over ${layout.areaSquareFeet.toFixed(1)} sq ft: ${tenthUp(dry)} psf seasoned, ${fresh.toFixed(1)} psf fresh from treatment`,
    `The job states ${stated} psf`,
  ])
  const wet =
    fresh > stated && dry <= stated ? `While still wet from treatment it weighs ${fresh.toFixed(1)} psf.` : ''
  return judge(job, {
    id: 'dead-load',
    title: 'Dead load',
    subjects: [],
    fields: ['site.deadLoad', 'decking.size', 'frame.joists.size', 'frame.joists.spacing'],
    prescriptive: found,
    calculated: null,
    good: () => `The deck's own lumber weighs ${tenthUp(dry)} psf of the ${stated} psf stated.`,
    bad: `The deck's own lumber weighs ${tenthUp(dry)} psf, more than the ${stated} psf stated.`,
    uncovered: 'No rule covers the dead load',
    remedy: `State a dead load of ${Math.ceil(dry)} psf.`,
    caution: [wet, 'Hot tubs, roofs and planters are not in it: they need a licensed designer.']
      .filter((text) => text !== '')
      .join(' '),
  })
}

/** A load to a tenth, rounded up as every paper rounds a demand. */
function tenthUp(load: number): string {
  return (Math.ceil(load * 10 - 1e-6) / 10).toFixed(1)
}

/** psf of the deck's outline. */
function weightOf({ frame, layout }: CheckContext, state: 'seasoned' | 'freshlyTreated'): number {
  const pounds = frame.members
    .filter((member) => CARRIED.includes(member.role))
    .reduce(
      (sum, { product, length }) =>
        sum + poundsPerFoot(product.size, product.species, state) * toFeet(length),
      0,
    )
  return pounds / layout.areaSquareFeet
}
