import { boltHoleSource, cite, ledgerHoles, ledgerHolesSource } from '../../data/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import type { Job } from '../../job/index.ts'
import { inches, printInches, printLength, ticks } from '../../units/index.ts'

/** The holes for the ledger's screws or bolts. */
export function ledgerHoleWords({ site }: Pick<Job, 'site'>): string {
  const print = (hole: number): string => printInches(ticks(inches(hole)))
  return site.ledgerFastener === 'lag'
    ? `Bore for each lag screw ${print(ledgerHoles.lagShank)} through the ledger, as wide as its shank, then ${print(ledgerHoles.lagLead)} for the thread into the band, as deep as the screw goes (${cite(ledgerHolesSource)}). Turn it in by a wrench, never by a hammer; a washer under each head.`
    : `Bore ${print(ledgerHoles.bolt)} for each bolt through all that it holds (${cite(boltHoleSource)}); a washer under head and nut.`
}

/** Where both ends of each ledger lie, from the left and the rear edge of the frame, as all measures of the sheets run. */
export function ledgerEndWords({ frame, layout }: Pick<Estimate, 'frame' | 'layout'>): string {
  const corners = layout.levels.flatMap(({ outline }) => outline)
  const [left, rear] = [Math.min(...corners.map(({ x }) => x)), Math.min(...corners.map(({ y }) => y))]
  const print = (at: number): string => printLength(ticks(Math.round(at)))
  return frame.members
    .filter(({ role }) => role === 'ledger')
    .map(({ mark, line, box }) => {
      const isAlong = box.x1 - box.x0 >= box.y1 - box.y0
      if (line !== undefined && line[0].x !== line[1].x && line[0].y !== line[1].y) {
        const [a, b] = line[0].x < line[1].x ? line : [line[1], line[0]]
        return `${mark} from ${print(a.x - left)} along and ${print(a.y - rear)} away to ${print(b.x - left)} along and ${print(b.y - rear)} away`
      }
      return isAlong
        ? `${mark} with its left end ${print(box.x0 - left)} and its right end ${print(box.x1 - left)} from the left edge of the frame`
        : `${mark} with its rear end ${print(box.y0 - rear)} and its front end ${print(box.y1 - rear)} from the rear edge of the frame`
    })
    .join('; ')
    .concat('.')
}
