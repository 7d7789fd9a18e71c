import type { Footing } from '../frame/index.ts'
import { tabledFootingDiameter, tabledFootingThickness } from '../rules/index.ts'
import { inches, ticks } from '../units/index.ts'
import type { BeamFacts, CheckContext } from './context.ts'
import { atLeast } from './finding.ts'
import { judge } from './judge.ts'
import { bearingOf } from './soil.ts'
import { underTables } from './tables.ts'
import type { Check } from './types.ts'
import { feetInches, squareFeetText } from './words.ts'

interface Loaded {
  readonly footing: Footing
  readonly area: number
}

/** Diameter of each footing by its tributary area and the soil, IRC 2021 Table R507.3.1. */
export function checkFootingSizes(context: CheckContext): readonly Check[] {
  return loadedFootings(context).map(({ footing, area }) => {
    const bearing = bearingOf(context.job)
    const across = ticks(Math.max(footing.base, footing.tube))
    const lookup = underTables(context, tabledFootingDiameter(area, bearing.psf, context.load))
    const prescriptive = atLeast(lookup, across, [
      `Tributary area: ${squareFeetText(area)}`,
      bearing.says,
      lookup.sentence,
    ])
    const needed = lookup.kind === 'row' && lookup.value !== null ? feetInches(inches(lookup.value)) : ''
    return judge(context.job, {
      id: `footing-size-${footing.id}`,
      title: 'Footing size',
      subjects: [footing.id],
      fields: ['ground.base', 'ground.tube', 'site.soil', 'site.soilBearing', 'frame.beams.front.posts'],
      prescriptive,
      calculated: null,
      good: () => `Footing ${footing.number} is ${feetInches(across)} across; ${needed} is needed.`,
      bad: `Footing ${footing.number} is ${feetInches(across)} across; ${needed} is needed.`,
      uncovered: `No table row covers a footing under ${squareFeetText(area)} at ${context.load} psf on ${bearing.psf} psf`,
      remedy: `Make the base at least ${needed} across, or use more posts.`,
      caution: bearing.caution,
    })
  })
}

/** Thickness of each footing, IRC 2021 Table R507.3.1; a tube without a base is as thick as it is long. */
export function checkFootingThicknesses(context: CheckContext): readonly Check[] {
  return loadedFootings(context).map(({ footing, area }) => {
    const bearing = bearingOf(context.job)
    const thickness = footing.base > 0 ? footing.baseThickness : footing.tubeLength
    const lookup = underTables(context, tabledFootingThickness(area, bearing.psf, context.load))
    const prescriptive = atLeast(lookup, thickness, [
      `Tributary area: ${squareFeetText(area)}`,
      bearing.says,
      `${lookup.sentence}; the table assumes a 6x6 post standing on the footing`,
    ])
    const needed = lookup.kind === 'row' && lookup.value !== null ? feetInches(inches(lookup.value)) : ''
    return judge(context.job, {
      id: `footing-thickness-${footing.id}`,
      title: 'Footing thickness',
      subjects: [footing.id],
      fields: ['ground.baseThickness', 'ground.base', 'site.soilBearing'],
      prescriptive,
      calculated: null,
      good: () => `Footing ${footing.number} is ${feetInches(thickness)} thick; ${needed} is needed.`,
      bad: `Footing ${footing.number} is ${feetInches(thickness)} thick; ${needed} is needed.`,
      uncovered: `No table row covers the thickness of a footing under ${squareFeetText(area)} at ${context.load} psf`,
      remedy: `Make the base at least ${needed} thick.`,
      caution: '',
    })
  })
}

function loadedFootings(context: CheckContext): readonly Loaded[] {
  return context.beams.flatMap((facts: BeamFacts) =>
    facts.posts.flatMap((post, i) => {
      const footing = context.frame.footings.find((one) => one.postId === post.id)
      return footing === undefined ? [] : [{ footing, area: facts.areas[i] ?? 0 }]
    }),
  )
}
