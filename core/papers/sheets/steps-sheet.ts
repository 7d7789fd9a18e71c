import { printLength } from '../../units/index.ts'
import { finishSteps } from '../build/finish-steps.ts'
import { frameSteps } from '../build/frame-steps.ts'
import { groundSteps } from '../build/ground-steps.ts'
import { longestMeasure } from '../build/longest-measure.ts'
import type { Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { nailingTable } from '../tables/nailing-table.ts'

const TOOLS = [
  'A second tape, string, pins, plumb bob, pencil, square, speed square',
  'Level of 4 ft, and a water or laser level for anything longer',
  'Shovel, digging bar, post-hole digger or a hired auger; barrow; tarpaulins; tamper',
  'Mixer or tub and hoe, rod, float, water',
  'Circular saw and a jigsaw, drill and impact driver with bits, ratchet, hammer, flat bar, clamps',
  'Ladder, planks, props and braces, horses',
  'Goggles, gloves, ear protection, dust mask, stout shoes',
] as const

/** A tape that reaches the longest measure on these sheets. */
function tape(estimate: PaperSource['estimate']): string {
  return `Tape that reaches ${printLength(longestMeasure(estimate))}, the longest measure on these sheets, or longer`
}

/** The order of work for someone who builds a first deck, with what to measure before going on. */
export function stepsSheet({ estimate }: PaperSource): Sheet {
  const ground = groundSteps(estimate)
  const frame = frameSteps(estimate)
  return {
    id: 'steps',
    title: 'Build steps',
    audience: 'crew',
    across: false,
    blocks: [
      {
        kind: 'caution',
        text: 'This is the order of work, not a licence to do it. What the building official says goes before what stands here.',
      },
      { kind: 'heading', text: 'Tools' },
      { kind: 'checklist', items: [tape(estimate), ...TOOLS] },
      {
        kind: 'text',
        text: 'One person can lay out, dig and deck. Two or more set the ledger, the posts, the beams and the joists.',
      },
      { kind: 'heading', text: 'Ground' },
      { kind: 'steps', items: ground },
      { kind: 'heading', text: 'Frame' },
      { kind: 'steps', items: frame, from: ground.length + 1 },
      { kind: 'heading', text: 'Decking and guard' },
      { kind: 'steps', items: finishSteps(estimate), from: ground.length + frame.length + 1 },
      { kind: 'table', table: nailingTable(estimate), empty: 'Nothing is nailed.' },
      {
        kind: 'text',
        tone: 'soft',
        text: 'A connector’s own listing goes before this table: every hole, with the nail that it names. Galvanised or stainless in treated wood.',
      },
    ],
  }
}
