import type { Member } from '../../frame/index.ts'
import type { StairPlan } from '../../stairs/index.ts'
import { printLength } from '../../units/index.ts'

/** What to set between a landing's posts, where, and of what, for the steps; null where there is nothing. */
export function landingBracingWords({ members }: StairPlan): string | null {
  const braces = members.filter(({ role }) => role === 'landing brace')
  const [first] = braces
  if (first === undefined) return null
  const markOf = (id: string | undefined) => members.find((one) => one.id === id)?.mark ?? ''
  const run = ({ mark, length, cause: { ids } }: Member) =>
    `${mark} from ${markOf(ids[0])} up to ${markOf(ids[1])}, ${printLength(length)}`
  return `Brace the landing’s posts before anything hangs on it: ${braces.length} diagonals of ${first.product.size}, flat on the posts, those of the sides on their inner faces, the others on the faces towards the deck, from 6 in over the foot of one to right under the frame at the other: ${braces.map(run).join('; ')}; trim the ends to the posts; one 1/2 in bolt with washers at each end. Common practice, no source: no table has them and nothing here reckons what they carry, so ask the inspector.`
}
