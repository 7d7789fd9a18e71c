import { fieldAt, type Job, type ScopeTopic, stairsOf } from '../job/index.ts'
import type { Good, Takeoff } from '../takeoff/index.ts'
import { countsDeliveries, isDeliveryLine } from './suppliers/counted.ts'
import type { Line, LineGroup, PriceBook } from './types.ts'

/** Things that estimates forget, in the order in which they are read out. */
export const scopeTopics: readonly ScopeTopic[] = [
  'stairs',
  'guard',
  'taking away',
  'hauling',
  'delivery',
  'permit',
  'marking',
  'flashing',
  'fasteners',
  'hire',
  'clean-up',
]

/** What a topic is called where it stands by itself: as its field is, "Marking of services". */
export function topicLabel(topic: ScopeTopic): string {
  return fieldAt(`scope.${topic}.included`).label.replace(/: included$/, '')
}

/** Goods and tasks that only stairs ask for; what they share with the deck stands with the deck's. */
const ofStairs = /^(stringer-|stair-|tread$|tread-bracket$|riser$|handrail|pad$|form-board$)/

const ofGuard = /^(guard-|baluster-|carriage-bolt)/

/** Topics whose goods and tasks are there only because other fields ask for them; a stated sum stands instead. */
const askedForElsewhere: ReadonlySet<ScopeTopic> = new Set<ScopeTopic>([
  'hire',
  'taking away',
  'hauling',
  'delivery',
  'marking',
])

/**
 * Whether a topic is counted piece by piece, by fields of its own or by what the book states of suppliers: a sum stated
 * for it is then not added.
 */
export function isModelled(job: Job, topic: ScopeTopic, book?: Pick<PriceBook, 'suppliers'>): boolean {
  if (topic === 'delivery') return book !== undefined && countsDeliveries(book)
  if (topic === 'stairs') return stairsOf(job).length > 0
  return topic === 'guard' && job.guard.where !== 'none'
}

/** The topic under which a good is counted, where a job may leave it out. */
export function topicOfGood(sku: string, group: LineGroup | Good['group']): ScopeTopic | null {
  if (group === 'fasteners') return 'fasteners'
  if (sku.startsWith('hire-')) return 'hire'
  if (sku === 'disposal-ton') return 'hauling'
  if (sku === 'delivery-trip') return 'delivery'
  if (ofStairs.test(sku)) return 'stairs'
  if (ofGuard.test(sku)) return 'guard'
  return sku === 'ledger-flashing' || sku === 'ledger-membrane' ? 'flashing' : null
}

/** The topic under which a task's hours are counted, where a job may leave it out. */
export function topicOfTask(rateId: string): ScopeTopic | null {
  if (ofStairs.test(rateId)) return 'stairs'
  if (ofGuard.test(rateId)) return 'guard'
  if (rateId.startsWith('demo-')) return 'taking away'
  if (rateId === 'haul-trip') return 'hauling'
  if (rateId === 'mark-services') return 'marking'
  return rateId === 'clean-final' ? 'clean-up' : null
}

/** The topic that a printed line belongs to: a stated sum, or something counted; null for the deck itself. */
export function topicOfLine(line: Pick<Line, 'id' | 'group' | 'code'>): ScopeTopic | null {
  if (line.group === 'labour') return topicOfTask(line.code)
  if (isDeliveryLine(line)) return 'delivery'
  if (line.id.startsWith(goodPrefix)) return topicOfGood(line.id.slice(goodPrefix.length), line.group)
  return scopeTopics.find((topic) => line.id === allowanceId(topic)) ?? null
}

export function allowanceId(topic: ScopeTopic): string {
  return `other-${topic.replace(' ', '-')}`
}

const goodPrefix = 'good-'

export function goodLineId(sku: string): string {
  return `${goodPrefix}${sku}`
}

/**
 * The goods and tasks without those whose topic the job does not include. Tools are hired because a field of the ground
 * asks for them: they are left out only where a stated sum stands for their hire.
 */
export function leaveOut(
  job: Job,
  takeoff: Pick<Takeoff, 'goods' | 'tasks'>,
): Pick<Takeoff, 'goods' | 'tasks'> {
  const wanted = (topic: ScopeTopic | null) => {
    // stairs and guards are taken off only where the job asks for them by their own fields
    if (topic === null || topic === 'stairs' || topic === 'guard') return true
    const { included, allowance } = job.scope[topic]
    return askedForElsewhere.has(topic) ? !(included && allowance > 0) : included
  }
  return {
    goods: takeoff.goods.filter((good) => wanted(topicOfGood(good.sku, good.group))),
    tasks: takeoff.tasks.filter((task) => wanted(topicOfTask(task.rateId))),
  }
}
