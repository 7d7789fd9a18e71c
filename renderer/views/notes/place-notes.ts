import type { Job } from '../../../core/job/index.ts'
import type { Place } from '../../state/session-types.ts'

/** What a work place is for: where in the order of work it stands, why it matters, what to beware of. */
export interface PlaceNote {
  /** the step of the work it belongs to */
  readonly step: string
  /** what is decided here and why */
  readonly why: string
  /** what goes wrong most; none where nothing is dangerous */
  readonly beware?: string
}

/** An owner builds once: the reason, the order of work and the dangers are told. */
const OWNER: { readonly [place in Place]: PlaceNote } = {
  site: {
    step: 'Step 1 of 6, before anything is bought: size, height, permit.',
    why: 'Measure the wall and the height of the door sill, and ask the building department for frost depth, snow and what a permit needs. Everything after this hangs on it.',
    beware: 'Have utilities marked before anyone digs; the call is free and takes some days.',
  },
  frame: {
    step: 'Step 2 of 6: the wood that carries.',
    why: 'Joists carry the boards, beams carry the joists, posts carry the beams. Each check says by which rule a member is strong enough. Size it finds the cheapest sizes that pass.',
    beware:
      'A ledger that is fixed badly is how decks fall. Look at its fasteners and at the wall behind it.',
  },
  ground: {
    step: 'Step 3 of 6, the first work on site: string lines, holes, inspection, concrete.',
    why: 'Footings must reach below the frost and spread the load on the soil. Lay out the strings by these measures, and dig when both diagonals agree.',
    beware: 'Most places inspect the open holes: do not pour before.',
  },
  boards: {
    step: 'Step 4 of 6: order the wood, then cut by the plan.',
    why: 'The order is the least that the frame needs, so a spoilt board is missed. Choose spares in the fields, and mark boards as you cut them.',
    beware: 'Look at each board when it arrives. Put the crown up, and do not use split ends at bearings.',
  },
  price: {
    step: 'Step 5 of 6: what it costs you.',
    why: 'You pay no wages and no margin: the hours are shown so that you can plan your weekends. Tools to hire or buy are lines too.',
    beware: 'The sample prices are invented. Ask your yard before you believe the sum.',
  },
  papers: {
    step: 'Step 6 of 6: papers for the permit, the yard and your pocket.',
    why: 'Build steps gives the order of work with the points of inspection. Print it with the footing layout, the marking sheet and the cutting sheets.',
    beware:
      'The official may ask for more than this; what lies outside the tables needs a licensed professional.',
  },
  'cut list': {
    step: 'Beside a deck: any list of pieces.',
    why: 'For shelves, fences or repairs: type the pieces, and the program says which boards to buy and where to cut.',
  },
  'price book': {
    step: 'What the yards ask.',
    why: 'Ask two yards for the same list and type both prices: the program says from whom to buy what, each delivery counted.',
    beware:
      'A price is good for weeks, not months. What is older than 60 days is marked; ask again before you order.',
  },
}

/** A contractor knows why: one line on what is quick to miss. */
const CONTRACTOR: { readonly [place in Place]: PlaceNote } = {
  site: {
    step: 'Size, height and place.',
    why: 'Compare other sizes shows where a foot more costs a joint. Say who told you frost, soil and snow: it is printed.',
  },
  frame: {
    step: 'Framing and checks.',
    why: 'Size it finds the cheapest frame that passes; hold what the yard has. Stairs and guard are folded below.',
  },
  ground: {
    step: 'Footings and layout.',
    why: 'Choose a hole to say where it was really found: each way to go on stands there with its cost.',
  },
  boards: {
    step: 'Order and cutting plan.',
    why: 'A wish on the cutting shows its price before you take it. Mark boards at the saw to plan the rest after a cull.',
  },
  price: {
    step: 'Cost and price.',
    why: 'Override any line and the computed value stays beside it. Margin is of the price, markup of the cost.',
  },
  papers: {
    step: 'Papers and quotes.',
    why: 'A quote that is numbered stays as it was sent; options are priced against the job as it is.',
  },
  'cut list': {
    step: 'Any list of pieces.',
    why: 'Paste from a spreadsheet; the stock is your price book or a list of your own.',
  },
  'price book': {
    step: 'Prices, suppliers and rates.',
    why: 'Every change counts at once and can be undone. Tax, overhead and margin belong to each job and stand under Price.',
  },
}

export function noteOf(place: Place, builder: Job['builder']): PlaceNote {
  return (builder === 'owner' ? OWNER : CONTRACTOR)[place]
}
