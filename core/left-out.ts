import type { Check } from './checks/index.ts'
import type { ScopeLine } from './estimate-types.ts'
import type { Job, ScopeTopic } from './job/index.ts'
import { isDeliveryLine, isModelled, type Line, scopeTopics, topicOfLine } from './pricing/index.ts'
import { type Cents, cents, printMoney, sumCents } from './units/index.ts'

/** What is not in the price when a topic is left out, in plain words. */
const withoutIt: { readonly [topic in ScopeTopic]: string } = {
  stairs: 'Stairs and their landing are not in this price.',
  guard: 'Guards are not in this price.',
  'taking away': 'Taking away an old deck, slab or planting is not in this price.',
  hauling:
    'Hauling debris and spoil off the site, and tipping fees, are not in this price; wheeling the holes’ spoil to a heap on the site is.',
  delivery: 'Delivery from the yard is not in this price.',
  permit: 'The permit and its drawings are not in this price.',
  marking:
    'Having buried pipes and cables marked is not in this price. It must be done before anything is dug.',
  flashing: 'Flashing and membrane at the ledger are not in this price.',
  fasteners: 'Nails and screws are not in this price.',
  hire: 'Hire of tools and machines is not in this price.',
  'clean-up': 'Clean-up is not in this price.',
}

/**
 * The things that estimates forget: each priced, with its sum, or said not to be included.
 * @param stairsWithDeck what of lines that stand with the deck's the stairs ask for
 */
export function leftOut(
  job: Job,
  checks: readonly Check[],
  lines: readonly Line[],
  stairsWithDeck: Cents = cents(0),
): readonly ScopeLine[] {
  return scopeTopics.map((topic) => {
    const counted = lines.filter((line) => topicOfLine(line) === topic)
    const { included, allowance } = job.scope[topic]
    // hired tools, stairs and guards count wherever a field of their own asks for them
    const priced = (included || asked.has(topic)) && counted.length > 0
    const amount = priced ? sumCents(counted.map((line) => line.amount)) : cents(0)
    if (priced) {
      const hours = counted
        .filter((line) => line.part === 'labour')
        .reduce((sum, l) => sum + l.thousandths, 0)
      const lumber = isModelled(job, topic)
        ? ` Its lumber is ordered with that of the deck.${notAdded(allowance, included)}`
        : counted.some(isDeliveryLine)
          ? ` By the suppliers’ fees.${notAdded(allowance, included)}`
          : ''
      const shared = topic === 'stairs' ? stairsWithDeck : cents(0)
      const beside =
        shared > 0
          ? ` Their share of concrete and gravel, ${printMoney(shared)} by volume, stands with the deck’s.`
          : ''
      const message = `${pricedMessage(counted, printMoney(amount), hours)}${lumber}${beside}`
      return { topic, state: 'priced', amount, ...(shared > 0 ? { shared } : {}), message }
    }
    const stated = included && allowance === 0 && !countedByProgram.has(topic)
    const because = stated ? ' The job includes it but states no sum.' : ''
    return { topic, state: 'not included', amount, message: `${notIncluded(job, topic, checks)}${because}` }
  })
}

/** Topics that fields other than those of the scope ask for. */
const asked: ReadonlySet<ScopeTopic> = new Set<ScopeTopic>([
  'hire',
  'taking away',
  'hauling',
  'delivery',
  'marking',
  'stairs',
  'guard',
])

/** Topics that the takeoff counts by itself. */
const countedByProgram: ReadonlySet<ScopeTopic> = new Set<ScopeTopic>(['flashing', 'fasteners', 'clean-up'])

function pricedMessage(counted: readonly Line[], amount: string, thousandthHours: number): string {
  const isSum = (line: Line) => line.unit === 'sum'
  const stated = counted.some(isSum)
  const both = stated && !counted.every(isSum)
  const how = both ? 'counted, with a stated sum' : stated ? 'a stated sum' : 'counted'
  const hours = thousandthHours > 0 ? `, ${thousandthHours / 1000} worker hours` : ''
  // a line's amount is what it costs, before overhead and margin
  return `In the price, at a cost of ${amount}: ${how}${hours}.`
}

function notIncluded(job: Job, topic: ScopeTopic, checks: readonly Check[]): string {
  if (topic === 'flashing' && job.site.attachment === 'freestanding') {
    return 'A freestanding deck has no ledger to flash.'
  }
  const guard = topic === 'guard' ? checks.find((check) => check.id === 'guard') : undefined
  return guard === undefined ? withoutIt[topic] : `${withoutIt[topic]} ${guard.message}`
}

/** A sum that stands in the job for what is counted. */
function notAdded(allowance: Cents, included: boolean): string {
  return included && allowance > 0 ? ` The sum of ${printMoney(allowance)} stated for it is not added.` : ''
}
