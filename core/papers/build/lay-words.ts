import type { Estimate } from '../../estimate-types.ts'
import { lengthList } from '../../job/index.ts'
import { printLength } from '../../units/index.ts'

/** As most decking is laid. */
export const STRAIGHT = 'straight across the joists'

/** How the decking is laid, part by part where parts differ. */
export function layWords({ job, frame }: Pick<Estimate, 'job' | 'frame'>): string {
  const ways = frame.decked.map(({ degrees }) =>
    degrees === 0 ? STRAIGHT : `${Math.abs(degrees)}° off square, leaning ${degrees > 0 ? 'right' : 'left'}`,
  )
  const [first = STRAIGHT] = ways
  const alike = ways.every((way) => way === first)
  const parts = alike ? first : ways.map((way, i) => `part ${i + 1}: ${way}`).join('; ')
  const { border, breakers } = job.decking
  return [
    parts,
    ...(border === 0 ? [] : [`in a border of ${border === 1 ? 'one course' : 'two courses'}`]),
    ...(lengthList(breakers).length === 0
      ? []
      : [`breakers at ${lengthList(breakers).map(printLength).join(', ')}`]),
  ].join(', ')
}
