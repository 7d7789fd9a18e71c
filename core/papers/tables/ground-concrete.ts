import type { Design } from '../../estimate-types.ts'
import type { ConcreteOrder, DiggingWay, MeasuredPosts, TubePlan } from '../../ground/index.ts'
import { printLength, printMoney, toFeet } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { quantity, tableOf } from './table.ts'

/** Bags beside the truck: what is bought, material with its tax, wages, and the sum of all. */
export function concreteTable({ bags, readyMix, bought }: ConcreteOrder): PaperTable {
  const rows: readonly (readonly [string, (way: ConcreteOrder['bags']) => string])[] = [
    ['Material', ({ material }) => printMoney(material)],
    ['Sales tax', ({ tax }) => printMoney(tax)],
    ['Worker hours', ({ hours }) => quantity(hours)],
    ['Wages', ({ labour }) => printMoney(labour)],
    ['Together', ({ total }) => printMoney(total)],
  ]
  const fee =
    readyMix === null || readyMix.missing === 0
      ? []
      : [{ what: 'Short-load fee, in the material', bags: '', truck: printMoney(readyMix.shortLoadFee) }]
  return tableOf(
    'concrete',
    'Concrete, bags or ready-mix',
    [
      ['what', '', 'left'],
      ['bags', bought === 'bags' ? 'Bags (bought so)' : 'Bags', 'right'],
      ['truck', bought === 'ready-mix' ? 'Ready-mix (bought so)' : 'Ready-mix', 'right'],
    ],
    [
      {
        what: 'Quantity',
        bags: `${bags.count} of 80 lb`,
        truck: readyMix === null ? 'no price' : `${quantity(readyMix.yards)} cu yd`,
      },
      ...fee,
      ...rows.map(([what, read]) => ({
        what,
        bags: read(bags),
        truck: readyMix === null ? '' : read({ ...bags, ...readyMix }),
      })),
    ],
  )
}

/** Volumes of all footings: what is dug, poured, filled and taken away. */
export function groundVolumesTable({
  job,
  takeoff: { volumes },
}: Pick<Design, 'job' | 'takeoff'>): PaperTable {
  const row = (what: string, cubicFeet: number, how: string) => ({
    what,
    feet: cubicFeet.toFixed(1),
    yards: (cubicFeet / 27).toFixed(2),
    how,
  })
  return tableOf(
    'ground-volumes',
    'Soil and concrete, all footings',
    [
      ['what', 'Volume', 'left'],
      ['feet', 'Cubic feet', 'right'],
      ['yards', 'Cubic yards', 'right'],
      ['how', '', 'left'],
    ],
    [
      row('Holes', volumes.holes, 'hole across × depth'),
      row('Concrete', volumes.concrete, 'tube and base, without waste'),
      row('Backfill', volumes.backfill, 'holes less what stands in them'),
      row(
        'Spoil, loose',
        volumes.spoilLoose,
        `what is not filled back, swollen by ${job.ground.swell / 100} %`,
      ),
    ],
  )
}

/** Which bought piece each form tube is cut from. */
export function tubesTable({ plan, label, sold }: TubePlan): PaperTable {
  return tableOf(
    'tubes',
    `Form tubes: ${label}`,
    [
      ['piece', 'Piece', 'right'],
      ['long', 'As sold', 'right'],
      ['tubes', 'Cut to', 'left'],
      ['left', 'Left over', 'right'],
    ],
    plan.boards.map(({ cuts, offcut }, i) => ({
      piece: `${i + 1}`,
      long: `${toFeet(sold)} ft`,
      tubes: cuts.map(({ mark, length }) => `${mark} ${printLength(length)}`).join(' + '),
      left: offcut === 0 ? '' : printLength(offcut),
    })),
  )
}

/** Hours of digging in each soil, by hand and with hired augers. */
export function diggingTable(ways: readonly DiggingWay[]): PaperTable {
  const soils = [...new Set(ways.map(({ soil }) => soil))]
  const cell = (soil: DiggingWay['soil'], how: DiggingWay['how']) => {
    const way = ways.find((one) => one.soil === soil && one.how === how)
    if (way === undefined) return ''
    const words = `${(way.workerHours / 1000).toFixed(1)} h, ${printMoney(way.cost)}`
    return way.stated ? `${words} (as stated)` : words
  }
  return tableOf(
    'digging',
    'Digging: worker hours, with wages and hire',
    [
      ['soil', 'Soil', 'left'],
      ['hand', 'By hand', 'right'],
      ['auger', 'Two-person auger', 'right'],
      ['machine', 'Auger on a machine', 'right'],
    ],
    soils.map((soil) => ({
      soil: soil === 'rock' ? 'rock, with a hired breaker (ask for a price of yours)' : soil,
      hand: cell(soil, 'by hand'),
      auger: cell(soil, 'two-person auger'),
      machine: cell(soil, 'machine auger'),
    })),
  )
}

/** Posts as measured at their piers beside the drawing. */
export function measuredPostsTable({ posts }: MeasuredPosts): PaperTable {
  return tableOf(
    'measured-posts',
    'Posts as measured',
    [
      ['post', 'Post', 'right'],
      ['drawn', 'Drawn', 'right'],
      ['measured', 'Measured', 'right'],
      ['off', 'Longer', 'right'],
    ],
    posts.map(({ post, drawn, measured, off }) => ({
      post: `${post}`,
      drawn: printLength(drawn),
      measured: printLength(measured),
      off: printLength(off),
    })),
  )
}

/** From which board each post is cut, the measured ones to their measure. */
export function postBoardsTable({ boards }: MeasuredPosts): PaperTable {
  return tableOf(
    'post-boards',
    'Cut the posts from',
    [
      ['board', 'Board', 'left'],
      ['posts', 'Posts', 'left'],
    ],
    boards.map(({ length, more, posts }) => ({
      board: `${more ? 'one more ' : ''}${printLength(length)}`,
      posts: posts.map((post) => `${post.mark} ${printLength(post.length)}`).join(' + '),
    })),
  )
}
