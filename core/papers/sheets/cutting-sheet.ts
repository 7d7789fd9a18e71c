import type { Planned } from '../../estimate-types.ts'
import { BEHIND_JOINT, boardsForBlocks, jointBlocks, productName } from '../../pricing/index.ts'
import { printInches, printLength, toFeet } from '../../units/index.ts'
import { type BoardName, boardNames } from '../cutting/board-names.ts'
import { hasClimbing, withClimbingCuts } from '../cutting/climbing-cuts.ts'
import { endOf, isOffSquare, liesFlat } from '../cutting/cut-ends.ts'
import { type SetUp, setUps } from '../cutting/set-ups.ts'
import { holdsOf } from '../order/holds.ts'
import { type WaitingBoard, waitingBoards } from '../order/waiting-boards.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { piecesByPlace } from '../tables/pieces-by-place.ts'

const MITRES =
  'Lengths are to the long point, figures to where a line meets the edge nearest to you. Slanting lines are drawn as they lean; one line between two pieces is one cut for both; where a board or a piece begins with a line of its own, saw left of it. Ends off square stand beside each piece in the lists by place, as it lies in the deck seen from above: which end, by how much, and on which side its long point is. No piece lies upside down on its board: the face or edge that is up here is up in the deck. One that is “end for end” has its left or rear end at the right here, any other has it at the left. Before a piece is moved write its mark on what is up, with an arrow to its left or rear end: so no mirrored pair is mixed up. “bevel”: the saw is tilted and cuts through the thickness; “mitre”: the cut runs across the face. A board that runs away from the house has a rear end, the one at the house, and a front end.'

/** Boards in the order to saw, like ones together, with the tape's running figures; then every piece by its place. */
export function cuttingSheet({ estimate }: PaperSource): Sheet {
  const { job, plans, takeoff } = estimate
  const { kerf, endTrim } = job.cutting
  const names = boardNames(plans)
  const waiting = waitingBoards(estimate, holdsOf(estimate))
  return {
    id: 'cutting',
    title: 'Cutting sheet',
    audience: 'crew',
    across: false,
    blocks: [
      {
        kind: 'steps',
        items: [
          {
            text: `Hook the tape on the board's left end and mark every figure under it in one go. Saw on the far side of each line: the kerf, ${printInches(kerf)}, is counted in.`,
            notes: [
              endTrim > 0
                ? `${printInches(endTrim)} is trimmed off each end first; the figures count from the end as it was bought.`
                : 'No end trim is planned: look at the ends first, and cut off a split one from the offcut’s side.',
              ...(takeoff.pieces.some(({ ends }) => ends !== undefined) ||
              takeoff.runs.some(({ ends, lap }) => ends !== undefined || lap !== undefined)
                ? [MITRES]
                : []),
              'A board’s name is its size and a number, one for the whole job: 2x10-4. It stands before its box’s pieces here, and beside every piece in the lists by place.',
              'Measure the board before the first cut. Write the mark on each piece as it comes off, and tick the board.',
            ],
          },
        ],
      },
      {
        kind: 'caution',
        text: 'Treated wood: eyes and lungs covered, no burning of offcuts. Brush every field cut with preservative.',
      },
      ...(waiting.length === 0
        ? []
        : [
            {
              kind: 'caution',
              text: 'A board that “waits” is neither bought nor sawn, none of its pieces, before what stands after it is settled: H1 and so on are the holds of the order.',
            } satisfies Block,
          ]),
      ...plans.flatMap((planned) =>
        productBlocks(estimate, planned, {
          nameOfBoard: nameOf(names, planned),
          keepFrom: job.cutting.keepOffcutsFrom,
          waiting: waiting.filter(({ planId }) => planId === planned.plan.jobId),
        }),
      ),
      { kind: 'page break' },
      ...plans.map(
        (planned): Block => ({
          kind: 'table',
          // each by itself: one with long words keeps no other from standing in two columns
          columns: `pieces ${planned.plan.jobId}`,
          table: piecesByPlace(estimate, planned, nameOf(names, planned)),
          tick: true,
          empty: 'No pieces.',
        }),
      ),
    ],
  }
}

function nameOf(names: ReadonlyMap<string, BoardName>, { plan }: Planned): BoardName {
  return names.get(plan.jobId) ?? String
}

function productBlocks(
  { frame, guard, takeoff }: PaperSource['estimate'],
  planned: Planned,
  {
    nameOfBoard,
    keepFrom,
    waiting,
  }: {
    readonly nameOfBoard: BoardName
    readonly keepFrom: number
    readonly waiting: readonly WaitingBoard[]
  },
): readonly Block[] {
  const climbers = guard?.members ?? []
  const groups = setUps(withClimbingCuts(planned, climbers))
  const rips = ripWords(frame.members, planned)
  const about = turnedAbout([...frame.members, ...(guard?.members ?? [])], planned)
  const longest = Math.max(...groups.map(({ length }) => length))
  const { plan, product } = planned
  const count = plan.boards.length
  const holds = new Map(waiting.map(({ number, by }) => [number, by.map(({ name }) => name).join(', ')]))
  return [
    { kind: 'heading', text: `${productName(product)}: ${count} ${count === 1 ? 'board' : 'boards'}` },
    ...[
      ...howDrawn([...frame.members, ...(guard?.members ?? [])], planned),
      ...(hasClimbing(planned, climbers) ? [CLIMBING] : []),
      ...rimBlocks(takeoff.runs, planned),
    ].map((text): Block => ({ kind: 'text', tone: 'soft', text })),
    ...groups.map(
      (group, index): Block => ({
        kind: 'set-up',
        title: `Set-up ${index + 1}: ${group.boards.length} × ${stockName(planned, group)}`,
        longest,
        fate: fateOf(group.offcut, keepFrom),
        ...group,
        boards: group.boards.map(({ number, marks }) => ({
          name: nameOfBoard(number),
          ...waitsFor(holds.get(number)),
          marks: marks.map(
            (mark) => `${mark}${rips.get(mark) ?? ''}${about.has(mark) ? ' (end for end)' : ''}`,
          ),
        })),
      }),
    ),
  ]
}

function waitsFor(names: string | undefined): { readonly waits?: string } {
  return names === undefined ? {} : { waits: names }
}

const CLIMBING =
  'Rails, caps and posts beside stairs are drawn as they are sawn: a rail lying on its face, its two cuts parallel across it; a cap on its edge, its two bevels parallel through its thickness; a post on a side that faces along the stairs. Saw one and hold it in its place before the others.'

/** Two blocks behind each joint of rims are among no board's pieces: they come off what is left, or off boards of their own. */
function rimBlocks(
  runs: PaperSource['estimate']['takeoff']['runs'],
  { plan, onHand }: Planned,
): readonly string[] {
  const blocks = jointBlocks(runs, plan)
  const { joints, wanted, found } = blocks
  if (joints === 0) return []
  const bought = boardsForBlocks(blocks, plan, onHand)
  const boards =
    bought === null
      ? ''
      : `${bought.count} × ${toFeet(bought.stock.length)} ft in the order ${bought.count === 1 ? 'is' : 'are'} for ${found === 0 ? 'them' : 'the others'}`
  const off = 'cut them off offcuts before those are thrown away or go to the rack'
  const from = found === wanted ? off : found === 0 ? boards : `offcuts give ${found} of ${wanted}, ${boards}`
  const count = joints === 1 ? 'One rim is jointed' : `Rims are jointed ${joints} times`
  return [
    `${count}: behind each joint a block of this size, ${printLength(BEHIND_JOINT)} long, is nailed along either side of the joist that ends there, one for each end of the rim. They are not among the pieces: ${from}.`,
  ]
}

type Members = PaperSource['estimate']['frame']['members']

/** What a slanting line of a set-up is, by how the product lies; and that ripped pieces are not drawn slanting. */
function howDrawn(members: Members, { plan, product }: Planned): readonly string[] {
  const own = members.filter((member) => productName(member.product) === productName(product))
  const byId = new Map(own.map((member) => [member.id, member]))
  const runs = new Map(plan.runPieces.map((piece) => [piece.id, piece.memberId]))
  const slanted = plan.boards
    .flatMap((board) => board.cuts)
    .filter(({ mitres }) => mitres !== undefined)
    .flatMap(({ pieceId }) => byId.get(runs.get(pieceId) ?? pieceId.replace(/^piece-/, '')) ?? [])
  const [flat, onEdge] = [slanted.some(liesFlat), slanted.some((member) => !liesFlat(member))]
  return [
    ...(flat
      ? [
          `${onEdge ? 'Decking and caps are drawn' : 'Drawn'} lying flat: a slanting line is a mitre across the face.`,
        ]
      : []),
    ...(onEdge
      ? [
          `${flat ? 'All else is drawn' : 'Drawn'} on edge, seen from above, the thickness widened: the two long lines are the board’s faces, a slanting line is a bevel through the thickness, and its figure is on the face nearest to you.`,
        ]
      : []),
    ...(own.some(({ ripTo, ends }) => ripTo !== null && ends !== undefined)
      ? [
          'Pieces to rip are sawn square here, to their long points. Rip them first, one long edge off; then mitre what is left of the width, as the list by place says.',
        ]
      : []),
  ]
}

/** Marks of the slanting pieces whose left or rear end lies at the right; few members are measured from another end. */
function turnedAbout(members: Members, { plan }: Planned): ReadonlySet<string> {
  const byId = new Map(members.map((member) => [member.id, member]))
  const runs = new Map(plan.runPieces.map((piece) => [piece.id, piece.memberId]))
  return new Set(
    plan.boards
      .flatMap(({ cuts }) => cuts)
      .flatMap(({ pieceId, mark, mitres, turned = false }) => {
        const member = byId.get(runs.get(pieceId) ?? pieceId.replace(/^piece-/, ''))
        const isBack = member !== undefined && ['right', 'front'].includes(endOf(member, 0).end)
        return mitres !== undefined && turned !== isBack ? [mark] : []
      }),
  )
}

/** "(rip to 3 5/16")" by the marks of a plan's pieces. */
function ripWords(members: Members, { plan }: Planned): ReadonlyMap<string, string> {
  const ripped = new Map(members.filter(({ ripTo }) => ripTo !== null).map((member) => [member.id, member]))
  const runs = new Map(plan.runPieces.map((piece) => [piece.id, piece]))
  return new Map(
    plan.boards
      .flatMap(({ cuts }) => cuts)
      .flatMap(({ pieceId, mark }) => {
        const run = runs.get(pieceId)
        const member = ripped.get(run?.memberId ?? pieceId.replace(/^piece-/, ''))
        if (member === undefined || member.ripTo === null) return []
        const then = isOffSquare(member, run) ? ', then mitre' : ''
        return [[mark, ` (rip to ${printInches(member.ripTo)}${then})`] as const]
      }),
  )
}

function stockName({ onHand }: Planned, { stockId, length }: SetUp): string {
  return onHand.includes(stockId)
    ? `offcut on hand, ${printLength(length)}`
    : `${toFeet(length)} ft, yard code ${stockId}`
}

function fateOf(offcut: number, keepFrom: number): string {
  if (offcut === 0) return 'nothing left'
  return offcut >= keepFrom ? 'keep: to the rack' : 'throw away'
}
