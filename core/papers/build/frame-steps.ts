import { carriers } from '../../frame/index.ts'
import { allHoles } from '../../ground/index.ts'
import { printInches, printLength, ticks } from '../../units/index.ts'
import { said } from '../said.ts'
import type { Step } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { guardPostSteps } from './guard-posts.ts'
import { houseHoldDownWords } from './house-hold-downs.ts'
import { squareWords } from './square-words.ts'

type Source = PaperSource['estimate']

/** Ledger, posts, beams, joists, blocking: in the order in which each carries the next. */
export function frameSteps(estimate: Source): readonly Step[] {
  return [...ledgerSteps(estimate), ...postSteps(estimate), ...joistSteps(estimate)]
}

/** What the second hold-down of each place is fixed to must be found while the ledger can still be moved. */
function insideSteps(estimate: Source): readonly Step[] {
  const held = houseHoldDownWords(estimate)
  return held === ''
    ? []
    : [
        {
          text: `Go inside the house before the ledger is hung, and look behind the band at each hold-down to the house: ${held}.`,
          notes: [
            'A floor joist beside the rod, or blocking between joists nailed through the subfloor, takes the second hold-down; no pipe, duct or wire where the rod comes through. The detail shows it.',
          ],
          cautions: [
            'Where the floor cannot be reached from inside, ask the building official before the ledger is hung.',
          ],
        },
      ]
}

function ledgerSteps(estimate: Source): readonly Step[] {
  const { job, frame, checks, layout } = estimate
  const ledger = frame.members.find(({ role }) => role === 'ledger')
  if (ledger === undefined) return []
  const below = ticks(Math.round(layout.deckTop - ledger.box.z1))
  return [
    {
      text: 'Take the siding off where the ledger goes and look at what is behind it: a sound band of solid wood, no rot, no foam, no brick.',
      cautions: [
        'Where it is anything else, stop: a ledger may not hang on it. A freestanding deck, or a designer.',
      ],
    },
    ...insideSteps(estimate),
    {
      text: `Strike the ledger’s top line, level: ${printLength(below)} under the top of the decking.`,
      notes: [
        `The decking’s top is ${printLength(job.size.height)} over the ground at the wall’s left end. Measure it from the door sill too: the decking must lie below it.`,
      ],
    },
    {
      text: 'Membrane on the wall where the ledger goes.',
    },
    {
      text: `Prop the ledger, level it, and fasten it as checked.`,
      notes: [
        ...said(checks, 'Ledger fasteners'),
        ...said(checks, 'Places of ledger fasteners'),
        ...said(checks, 'Lateral load connection'),
      ],
      cautions: ['Nails alone do not hold a ledger. Decks fall when ledgers come off.'],
    },
    {
      text: 'Z flashing with a drip edge over the ledger’s top, and the house’s own barrier lapped over the flashing. Water runs out, never in.',
    },
  ]
}

function postSteps(estimate: Source): readonly Step[] {
  const { job, frame } = estimate
  const posts = allHoles(estimate).flatMap(({ number, under, post }) =>
    post === null
      ? []
      : [{ ...post, name: under === 'deck' ? `post ${number}` : `landing post ${post.mark}` }],
  )
  const lengths = posts.map(({ name, length }) => `${name} ${printLength(length)}`)
  return [
    {
      text: 'Bolt the post bases to the anchors, each turned square to the strings.',
      notes: [
        `${posts.length} bases with a stand-off of ${printInches(job.ground.standoff)}: end grain stays dry.`,
      ],
    },
    {
      text: 'Measure each post at its own pier: level over from the ledger or a string, down to the base. Then cut.',
      notes: [`As drawn: ${lengths.join(', ')}. Off by more than 1/2 in: look for the reason first.`],
      cautions: ['Brace every post both ways before a beam goes up.'],
    },
    {
      text: 'Nail the beams’ plies together on horses, joints over posts as drawn, crowns up; lift them on and fix the caps.',
      notes: frame.beams.map(
        ({ mark, plies, size, postIds, flush }) =>
          `${mark}: ${plies} plies of ${size} on ${postIds.length} posts${flush ? ', flush: its top level with the joists’ tops, propped until they hang' : ''}; two rows of nails at 16 in, staggered (check the schedule of the code for your plies).`,
      ),
      cautions: [
        'A beam takes two or more people, and a prop under each end until it is fixed.',
        ...mitredBeams(frame),
      ],
    },
  ]
}

function joistSteps(estimate: Source): readonly Step[] {
  const { job, frame } = estimate
  const [carrier] = carriers(estimate, estimate.plans)
  const count = frame.members.filter(({ role }) => role === 'joist').length
  const hangers = frame.connectors
    .filter(({ kind }) => kind === 'joist hanger')
    .reduce((sum, one) => sum + one.count, 0)
  const ties = frame.connectors
    .filter(({ kind }) => kind === 'uplift tie')
    .reduce((sum, one) => sum + one.count, 0)
  const joints = jointNotes(frame)
  const ends = frame.members.filter(({ role }) => role === 'end joist')
  const endMarks = ends.length === 0 ? '' : ` ${numberedMarks(ends)}`
  const hips = frame.members.filter(({ role }) => role === 'hip')
  const hipIds = new Set(hips.map(({ id }) => id))
  const onHips = frame.members.filter(
    ({ role, bearings }) => role === 'joist' && bearings.some((id) => hipIds.has(id)),
  )
  const blocks = frame.members.filter(({ role }) => role === 'blocking').length
  const held = houseHoldDownWords(estimate)
  return [
    {
      text: `Mark ledger, rims${hips.length === 0 ? '' : `, hip ${hips.map(({ mark }) => mark).join(' and ')}`} and beams from the joist marking sheet: line, and X on the side where the joist stands.`,
      notes:
        carrier === undefined
          ? []
          : [
              `${carrier.label}: first line ${carrier.marks[0]?.mark ?? ''} at ${printLength(carrier.marks[0]?.at ?? ticks(0))}.`,
            ],
    },
    {
      text:
        hips.length === 0
          ? `Set the end joists${endMarks}, pull the frame square, then the ${count} joists: crown up, tops flush.`
          : `Set the end joists${endMarks}, then the ${count - onHips.length} joists that reach from ledger to beam: crown up, tops flush. The ${onHips.length} that meet a hip wait: ${numberedMarks(onHips)}.`,
      notes: [
        `${hips.length === 0 ? 'Square' : 'Square, once the rims stand and before the hip'}: ${squareWords(estimate)}. ${hangers > 0 ? `${hangers} hangers${hips.length === 0 ? '' : ' in all'}, every hole filled with the nail it is listed for.` : ''}`,
        ...joints,
      ],
      cautions: ['Until it is blocked and tied a joist rolls under you: walk on planks.'],
    },
    ...(hips.length === 0
      ? []
      : [
          {
            text: 'Nail the rims to the joists that are up and to each other, and prop their free ends level.',
            notes: ['Joists at the hip hang between it and the rims: both must stand first.'],
          },
          {
            text: `Set the hip, ${hips.map(({ mark }) => mark).join(' and ')}: nail its two halves face to face, two rows at 16 in, staggered; hang it at the corner of the ledgers, rest it on the beams’ corner, fix it to the corner of the rims, on either side by an angle made for 45°; tops flush.`,
            notes: [
              'What carries it at its ends is on the checks sheet; what does not pass there is designed first.',
            ],
            cautions: ['Prop it until both ends are fixed.'],
          },
          {
            text: `Set the joists at the hip, ${numberedMarks(onHips)}, from the longest to the shortest: slanting end to the hip in its hanger, the other to the rim, over the beam where it reaches one.`,
          },
        ]),
    {
      text: `Fit ${ties} uplift ties, ${hips.length === 0 ? 'the rims, and' : 'and'} ${blocks} blocks over the beams${held === '' ? '' : `; then the hold-downs to the house: ${held}; on each rod a second one inside`}.`,
      notes: ['Every cut and bored hole is brushed with preservative before it is closed.'],
    },
    ...guardPostSteps(estimate),
    {
      text: 'INSPECTION: framing, before any decking hides it.',
      notes: [
        `See the inspection ${job.site.attachment === 'ledger' ? 'cards “Ledger” and “Framing”: the ledger stays open to view until then' : 'card “Framing”'}. Spacing ${printInches(job.frame.joists.spacing)} on centre.`,
      ],
    },
  ]
}

/** "J1 to J6, J32": runs of marks that follow each other. */
function numberedMarks(members: Source['frame']['members']): string {
  const marks = members.map(({ mark }) => mark)
  const follows = (at: number) =>
    Number(marks[at]?.slice(1)) === Number(marks[at - 1]?.slice(1)) + 1 &&
    !Number.isNaN(Number(marks[at]?.slice(1)))
  return marks
    .flatMap((mark, at) => {
      if (at > 0 && follows(at)) return []
      let last = at
      while (last + 1 < marks.length && follows(last + 1)) last += 1
      return [last === at ? mark : `${mark} to ${marks[last] ?? mark}`]
    })
    .join(', ')
}

/** Beams that meet in a mitre: both ends on one post. */
function mitredBeams({ members, beams }: Source['frame']): readonly string[] {
  const met = beams.filter(({ plyIds }) =>
    members.some(({ id, ends }) => plyIds.includes(id) && ends !== undefined),
  )
  if (met.length < 2) return []
  return [
    `${met.map(({ mark }) => mark).join(' and ')} end in mitres where they meet: saw the plies as the cutting sheet says, fit them dry on horses, and bring both onto the post’s middle. The cap there must be made for beams that meet at that angle: ask its maker before it is bought.`,
  ]
}

/** How joists meet over a middle beam. */
function jointNotes({ connectors }: Source['frame']): readonly string[] {
  return connectors.flatMap(({ kind, count, overlap }) => {
    if (kind === 'joist lap')
      return [
        `${count} joists lap over a middle beam by ${printInches(overlap ?? ticks(0))}: beyond it they stand on the other side of the line, as the marking sheet shows. Three 10d nails through the faces of each pair.`,
      ]
    if (kind === 'joist splice')
      return [
        `${count} ${count === 1 ? 'joist is' : 'joists are'} butted over the middle of a middle beam, a plate on each side of the butt.`,
      ]
    return []
  })
}
