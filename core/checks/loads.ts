import { IRC_LIMITS } from '../data/index.ts'
import { type Job, toldBy } from '../job/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit } from './finding.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'

const HEAVY: { readonly [what in Exclude<Job['site']['onDeck'], 'none'>]: string } = {
  'hot tub': 'The deck carries a hot tub, and the deck tables of the code do not reckon with one',
  roof: 'The deck carries a roof, and the deck tables of the code do not reckon with one',
  planters: 'The deck carries planters, and the deck tables of the code do not reckon with them',
  several: 'The deck carries several heavy things, and the deck tables of the code do not reckon with them',
  unknown: 'It is not known whether a hot tub, a roof or planters will stand on the deck',
}

/**
 * What the deck is reckoned to carry: live load or ground snow, the larger and never both. Heavy things beside people
 * and furniture are outside the tables, and so outside what this program may pass. IRC 2021 Table R301.5, R507.1.
 */
export function checkLoads(context: CheckContext): Check {
  const { job } = context
  const { liveLoad, snowLoad, snowStated, snowSource, onDeck, windExposure, windSource } = job.site
  const wind =
    windExposure === 'unknown'
      ? 'Wind exposure not known: taken as D, the most open'
      : `Wind exposure ${windExposure}, ${toldBy(windSource)}`
  const found = byLimit(
    IRC_LIMITS.deckLoads,
    { value: IRC_LIMITS.deckLoads.value, unit: 'psf' },
    { value: context.load, unit: 'psf' },
    [
      `Live load ${liveLoad} psf`,
      snowStated
        ? `Ground snow load ${snowLoad} psf, ${toldBy(snowSource)}`
        : `Ground snow load not known: taken as ${snowLoad} psf, the most that the deck tables cover`,
      `The larger of the two, never their sum: ${context.load} psf`,
      wind,
      onDeck === 'none'
        ? 'Nothing heavier stands on the deck, as the job states'
        : `On the deck, as the job states: ${onDeck}`,
    ],
  )
  return judge(job, {
    id: 'loads',
    title: 'Loads',
    subjects: [],
    fields: ['site.onDeck', 'site.liveLoad', 'site.snowLoad', 'site.snowSource', 'site.windExposure'],
    prescriptive: onDeck === 'none' ? { ...found, ratio: null } : null,
    calculated: null,
    good: () =>
      snowLoad > liveLoad
        ? `The deck is reckoned with ${context.load} psf of ground snow${snowStated ? '' : ', because the ground snow load is not known'}.`
        : `The deck is reckoned with ${context.load} psf of live load.`,
    bad: '',
    uncovered: onDeck === 'none' ? '' : HEAVY[onDeck],
    ...(onDeck === 'unknown'
      ? {
          whenUncovered:
            'Ask, and state it; until then the deck is not passed: a licensed designer sizes it.',
        }
      : {}),
    remedy: '',
    caution: snowCaution(job),
  })
}

function snowCaution({ site: { liveLoad, snowLoad, snowStated, snowSource } }: Job): string {
  const ask = 'Ask the building department for the ground snow load'
  if (snowStated) return snowSource === '' ? `${ask}.` : ''
  return `${ask} and state it: with ${liveLoad} psf or less the deck is reckoned with ${liveLoad} psf in place of ${Math.max(liveLoad, snowLoad)} psf.`
}
