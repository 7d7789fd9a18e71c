import { printInches } from '../../units/index.ts'
import { borderAndGuard } from '../build/border-and-guard.ts'
import { layWords } from '../build/lay-words.ts'
import { startLines, startWords } from '../build/start-lines.ts'
import { isFitted } from '../cutting/fitted.ts'
import { deckingPlan } from '../drawings/framing-plan.ts'
import type { Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'

/** Of a page's height for the drawing, so that how it is laid stands under it. */
const SHARE = 0.76

/** The decking from above with its joints: how it is laid, what is ripped, and the same laid wet and tight. */
export function deckingSheet({ estimate }: PaperSource): Sheet {
  const { job, frame, takeoff, plans } = estimate
  const { gap, wallGap, overhang, fastening, size, edges } = job.decking
  const boards = frame.members.filter(({ role }) => role === 'decking')
  const ripped = boards.filter(({ ripTo }) => ripTo !== null)
  const fitted = boards.filter(isFitted)
  const forecast = takeoff.decking
  const clash = borderAndGuard(job)
  const starts = startLines(estimate)
  return {
    id: 'decking',
    title: 'Decking plan',
    audience: 'crew',
    across: true,
    blocks: [
      {
        kind: 'drawing',
        drawing: deckingPlan(estimate, plans),
        layers: ['house', 'decking', 'joints', 'marks'],
        share: SHARE,
      },
      ...(clash === null ? [] : [{ kind: 'caution' as const, text: clash }]),
      {
        kind: 'facts',
        together: 'facts',
        rows: [
          ['Boards', `${size}, ${edges} edges, held by ${fastening}`],
          ['Laid', layWords(estimate)],
          ...starts.map((line) => ['Start line', startWords(line)] as const),
          [
            'Gaps',
            `${printInches(gap)} between boards, ${printInches(wallGap)} off a wall; ${printInches(overhang)} past the frame`,
          ],
          [
            'Ripped',
            ripped.length === 0
              ? 'none'
              : ripped.map(({ mark, ripTo }) => `${mark} to ${printInches(ripTo ?? gap)}`).join(', '),
          ],
          ...(fitted.length === 0
            ? []
            : [
                [
                  'Cut to fit',
                  `${fitted.map(({ mark }) => mark).join(', ')}: a corner reaches into the board; hold it in place and mark it`,
                ] as const,
              ]),
          ...(forecast === null
            ? []
            : [
                [
                  'Dry, or wet',
                  `Dry boards with gaps of ${printInches(forecast.dry.gap)}: ${forecast.dry.courses} courses. Wet from treatment and tight: ${forecast.wet.courses}, whose gaps open to about ${printInches(forecast.wet.finalGap)}.`,
                ] as const,
              ]),
          [
            'How to read it',
            `A heavy short stroke across a board: a joint. Lengths are to the long points.${starts.length > 0 ? ' The heavy line from S to S is what the first board is laid to.' : ''}`,
          ],
        ],
      },
    ],
  }
}
