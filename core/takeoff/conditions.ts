import type { Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { feet } from '../units/index.ts'
import type { Task } from './types.ts'

/** Kinds of work that crews and conditions lengthen alike. */
type Group =
  | 'layout'
  | 'demolition'
  | 'ground'
  | 'concrete'
  | 'posts'
  | 'beam'
  | 'ledger'
  | 'joists'
  | 'decking'
  | 'stairs'
  | 'guards'
  | 'finish'
  | 'clean up'
  | 'general'

const GROUPS: readonly (readonly [RegExp, Group])[] = [
  [/^layout-ledger$/, 'layout'],
  [/^layout-/, 'layout'],
  [/^(demo-|haul-)/, 'demolition'],
  [/^(dig-|auger-|hole-|spoil-|backfill-|gravel-|groundcover)/, 'ground'],
  [/^(form-|mix-|readymix-|wetset-|pad$|rebar)/, 'concrete'],
  [/^post-/, 'posts'],
  [/^beam-/, 'beam'],
  [/^(ledger-|lateral-)/, 'ledger'],
  [/^(joist|hanger|rim$|blocking$|stair-header$)/, 'joists'],
  [/^(deck-|fascia|skirting)/, 'decking'],
  [/^(stringer-|tread$|riser$|stair-)/, 'stairs'],
  [/^guard-/, 'guards'],
  [/^(wash|stain-)/, 'finish'],
  [/^clean-/, 'clean up'],
]

/**
 * Worker hours of other crews over those of two professionals, in hundredths: common practice, no source; that a first
 * deck takes two to three times as long is a contractor's printed opinion, its split by work judged. A person alone is
 * taken to be slower at everything, though what one does anyway would take no longer: the safer side.
 */
const FIRST_TIME: { readonly [group in Group]: number } = {
  layout: 300,
  demolition: 150,
  ground: 175,
  concrete: 175,
  posts: 250,
  beam: 250,
  ledger: 300,
  joists: 250,
  decking: 175,
  stairs: 350,
  guards: 300,
  finish: 150,
  'clean up': 125,
  general: 150,
}
const CREWS = {
  two: 100,
  'three or more': 105,
  alone: 115,
  'with a helper': 120,
  'handy owner': 160,
} as const

/** Factors of the place and the day, in hundredths: common practice, no source. */
const ACCESS = 115
const WEATHER = 115
const HIGH = { from: feet(8), factor: 125, groups: ['posts', 'beam', 'ledger', 'joists', 'guards'] } as const
const SMALL = { under: 60, factor: 125, groups: ['layout', 'beam', 'joists', 'decking'] } as const

/** Tasks with what the crew and the conditions of the job add to their hours; plain tasks are left as they are. */
export function underConditions(job: Job, frame: Frame, tasks: readonly Task[]): readonly Task[] {
  const high = greatestHeight(job, frame) > HIGH.from
  const small = frame.areaSquareFeet < SMALL.under
  return tasks.map((task) => {
    const group = groupOf(task.rateId)
    const factors = factorsOn(job, group, { high, small }).filter(([, factor]) => factor !== 100)
    if (factors.length === 0) return task
    const product = factors.reduce((sum, [, factor]) => sum * (factor / 100), 1)
    return {
      ...task,
      conditions: {
        factor: Math.round(product * 10_000),
        why: factors.map(([name, factor]) => `${name} × ${factor / 100}`).join(', '),
        fields: ['work.crew', 'work.access', 'work.weather', 'work.heightAndSize'],
      },
    }
  })
}

function factorsOn(
  { work }: Job,
  group: Group,
  { high, small }: { readonly high: boolean; readonly small: boolean },
): readonly (readonly [string, number])[] {
  const crew = work.crew === 'first-time owner' ? FIRST_TIME[group] : CREWS[work.crew]
  const among = (groups: readonly Group[]) => groups.includes(group)
  return [
    [`crew: ${work.crew}`, crew],
    ['access', work.access === 'easy' ? 100 : ACCESS],
    ['weather', work.weather === 'fair' ? 100 : WEATHER],
    ['over 8 ft high', work.heightAndSize && high && among(HIGH.groups) ? HIGH.factor : 100],
    ['under 60 sq ft', work.heightAndSize && small && among(SMALL.groups) ? SMALL.factor : 100],
  ]
}

function groupOf(rateId: string): Group {
  return GROUPS.find(([pattern]) => pattern.test(rateId))?.[1] ?? 'general'
}

function greatestHeight(job: Job, { posts }: Frame): number {
  return job.size.height - Math.min(0, ...posts.map(({ ground }) => ground))
}
