import type { Member } from '../../frame/index.ts'
import { printInches, printLength } from '../../units/index.ts'
import type { Step } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { borderAndGuard } from './border-and-guard.ts'
import { blockWords, guardBlockCount, guardPostMarks } from './guard-posts.ts'
import { landingBracingWords } from './landing-bracing.ts'
import { landingWords } from './landing-words.ts'
import { lastCardTitle } from './last-card.ts'
import { layWords } from './lay-words.ts'
import { atLandingWords, headWords, padAnchorWords, treadOrderWords } from './stair-bearing-words.ts'
import { startLines, startWords } from './start-lines.ts'

/** Decking, stairs, guard, the last inspection. */
export function finishSteps(estimate: PaperSource['estimate']): readonly Step[] {
  const { job, frame, checks, takeoff, stairs } = estimate
  const courses = frame.members.filter(({ role }) => role === 'decking')
  const ripped = courses.filter(({ ripTo }) => ripTo !== null)
  const { gap, wallGap, overhang } = job.decking
  const clash = borderAndGuard(job)
  const starts = startLines(estimate)
  const notched = guardPostMarks(estimate, 'deck')
  const guard = checks.filter(({ title }) => title === 'Guard').map(({ message }) => message)
  return [
    {
      text: `Lay ${boardWords(courses, starts.length > 0)}, ${layWords(estimate)}, joints on joists as the cutting sheet says.`,
      notes: [
        ...starts.map(
          (line) =>
            `Start line: ${startWords(line)} Snap it over the joists, lay ${line.board.mark} to it and go on from there both ways.`,
        ),
        gap === 0
          ? 'Wet treated boards are laid tight: they open a gap as they dry.'
          : `Gap ${printInches(gap)}${wallGap > 0 ? `, ${printInches(wallGap)} off the wall` : ''}; boards laid wet are laid tight, for they shrink.`,
        ...(takeoff.decking !== null && takeoff.decking.wet.courses !== takeoff.decking.dry.courses
          ? [
              `Laid wet and tight it is ${takeoff.decking.wet.courses} courses instead. ${courses.length < takeoff.decking.wet.courses ? `The cutting sheet and the order have ${courses.length}: have ${takeoff.decking.wet.courses - courses.length} more where the boards come wet.` : ''}`.trim(),
            ]
          : []),
        ...(notched === ''
          ? []
          : [
              `Boards are notched round the guard’s posts ${notched}, which stand already: fit each notch where its board lies.`,
            ]),
        ...(clash === null ? [] : [clash]),
        ...(job.decking.border > 0
          ? [
              'Dry-fit the border first and strike its inner edge on the joists: the other boards end a gap short of it.',
            ]
          : [
              `Ends run ${printInches(overhang)} past the frame. ${runsWild(estimate) ? 'Where the cutting sheet gives a length in place, leave the end long, snap a line, cut all in one pass; the others come' : 'They come'} cut to length: strike that line first and lay each end to it.`,
            ]),
        ...(ripped.length > 0
          ? [
              `Ripped: ${ripped.map(({ mark, ripTo }) => `${mark} to ${printInches(ripTo ?? overhang)}`).join(', ')}.`,
            ]
          : []),
        'After every fifth course measure what is left at both ends: the same, or close the difference over the next courses.',
      ],
    },
    ...frame.steps.map(({ higher, lower, risers, drop, width }) => ({
      text: `Build the box step from level ${higher} down to level ${lower}: ${risers} equal risers in a drop of ${printInches(drop)}, ${printInches(width)} wide, level by level from below.`,
      notes: ['Rip its boards to one height; screw each box down, and to the higher level’s rim.'],
    })),
    ...(stairs.length > 0
      ? [
          {
            text: 'Build the stairs as on their own drawing: equal risers, heads on their headers, feet on pad, footings or strip, handrail.',
            notes: [
              ...stairs.flatMap((one) => {
                const words = landingWords(one)
                const atLanding = atLandingWords(one)
                const heads = headWords(one)
                const braced = landingBracingWords(one)
                return words === null
                  ? [heads]
                  : [
                      `The landing first: ${words}.${landingPosts(estimate)}`,
                      ...(braced === null ? [] : [braced]),
                      heads,
                      ...(atLanding === null ? [] : [atLanding]),
                    ]
              }),
              ...stairs.flatMap((one) => padAnchorWords(one)),
              ...stairPostWords(estimate),
              ...stairs.flatMap((one) => treadOrderWords(one)).slice(0, 1),
            ],
          },
        ]
      : []),
    {
      text: guardWords(estimate),
      notes: guard,
      cautions: [
        'Where the drop is more than 30 in no one goes on the deck without a guard or a temporary rail.',
      ],
    },
    {
      text: 'INSPECTION: final.',
      notes: [
        stairs.length > 0 || (estimate.guard !== null && estimate.guard.stretches.length > 0)
          ? `See the inspection cards “${lastCardTitle(estimate)}” and “Final”.`
          : 'See the inspection card “Final”.',
      ],
    },
    {
      text: `Clear up: nails off the ground with a magnet, offcuts to the rack or away; treated wood is not burnt. Check the first weeks: screws proud of the wood, water lying, a post off plumb. Top of decking ${printLength(job.size.height)}.`,
    },
  ]
}

/** The posts of a landing's guard, before its boards. */
function landingPosts(estimate: PaperSource['estimate']): string {
  const { guard } = estimate
  const marks = guardPostMarks(estimate, 'landing')
  if (guard === null || marks === '') return ''
  const blocks = blockWords(guardBlockCount(guard, 'landing'))
  return ` Before its boards its guard’s posts ${marks}${blocks === '' ? '' : `, then ${blocks} behind them`}: they are on the card “${lastCardTitle(estimate)}”.`
}

/** Blocks between stringers lie under the treads. */
function stairPostWords({ guard }: PaperSource['estimate']): readonly string[] {
  if (guard === null || guard.stairPosts === 0) return []
  const blocks = blockWords(guardBlockCount(guard, 'stairs'))
  return blocks === ''
    ? []
    : [`Before the treads: ${blocks} between the stringers, for the guard’s posts there.`]
}

/** Whether any board of the decking is sawn longer than it will be. */
function runsWild({ plans, frame }: PaperSource['estimate']): boolean {
  const decking = new Set(frame.members.flatMap(({ id, role }) => (role === 'decking' ? [id] : [])))
  return plans.some(({ plan }) => {
    const runs = new Set(plan.runPieces.flatMap(({ id, memberId }) => (decking.has(memberId) ? [id] : [])))
    return plan.boards.some(({ cuts }) =>
      cuts.some(
        ({ wild, pieceId }) =>
          wild !== undefined && (runs.has(pieceId) || decking.has(pieceId.replace(/^piece-/, ''))),
      ),
    )
  })
}

/** A guard that is laid out has a drawing; one that stands in the price as a sum comes from its maker. */
function guardWords({ guard, job }: PaperSource['estimate']): string {
  if (guard !== null) {
    const filled = guard.balusters.length === 0 ? 'panels' : 'balusters'
    const cap = job.guard.cap === 'none' ? '' : ', then the cap'
    return `Set the guard’s ${guard.stairPosts > 0 ? 'posts on the stairs, then its ' : ''}rails and ${filled} as on their own drawing${cap}.`
  }
  return job.scope.guard.included
    ? 'Set the guard’s posts and rails as their maker says.'
    : 'No guard is in this job.'
}

/** Courses, and beside them what frames or parts them. */
function boardWords(boards: readonly Member[], isStarted: boolean): string {
  const count = (part: 'border' | 'breaker') => boards.filter(({ lay }) => lay?.part === part).length
  const [border, breaker] = [count('border'), count('breaker')]
  const field = boards.length - border - breaker
  return [
    `${field} courses of decking${isStarted ? '' : ', from the house outward'}`,
    ...(border === 0 ? [] : [`${border} boards of border`]),
    ...(breaker === 0 ? [] : [`${breaker} ${breaker === 1 ? 'breaker' : 'breakers'}`]),
  ].join(', with ')
}
