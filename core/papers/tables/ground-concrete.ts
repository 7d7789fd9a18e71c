import type { Design } from '../../estimate-types.ts'
import type { ConcreteOrder, DiggingWay, MeasuredPosts, TubePlan } from '../../ground/index.ts'
import { printLength, printMoney, toFeet } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { quantity, tableOf } from './table.ts'

/** Bags beside the truck: material with its tax, wages, and the sum of both. */
export function concreteTable({ bags, readyMix, bought }: ConcreteOrder): PaperTable {
  const row = (name: string, how: string, way: ConcreteOrder['bags' | 'readyMix'], chosen: boolean) =>
    way === null
      ? []
      : [
          {
            way: chosen ? `${name} (bought so)` : name,
            quantity: how,
            material: printMoney(way.material),
            tax: printMoney(way.tax),
            hours: quantity(way.hours),
            labour: printMoney(way.labour),
            total: printMoney(way.total),
          },
        ]
  const truck =
    readyMix === null
      ? ''
      : `${quantity(readyMix.yards)} cu yd${readyMix.missing === 0 ? '' : `, short-load fee ${printMoney(readyMix.shortLoadFee)} in it`}`
  return tableOf(
    'concrete',
    'Concrete, bags or ready-mix',
    [
      ['way', 'Bought as', 'left'],
      ['quantity', 'Quantity', 'left'],
      ['material', 'Material', 'right'],
      ['tax', 'Sales tax', 'right'],
      ['hours', 'Worker hours', 'right'],
      ['labour', 'Wages', 'right'],
      ['total', 'Together', 'right'],
    ],
    [
      ...row('Bags, mixed by hand', `${bags.count} bags of 80 lb`, bags, bought === 'bags'),
      ...row('Ready-mix', truck, readyMix, bought === 'ready-mix'),
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
      soil: soil === 'rock' ? 'rock: outside every rate' : soil,
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
