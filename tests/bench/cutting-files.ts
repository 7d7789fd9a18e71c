import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import type { CutJob, FixedPiece, RunGroup, StockOption } from '../../core/cutting/index.ts'
import type { Cents, Ticks } from '../../core/units/index.ts'

/** One instance of a bench file, as a job, with what is known about it. */
export interface Instance {
  readonly name: string
  readonly set: string
  readonly job: CutJob
  readonly optimum: number | null
}

interface SingleStock {
  readonly name: string
  readonly set?: string
  readonly capacity: number
  readonly items: readonly (readonly [number, number])[]
  readonly optimum?: number | null
}

interface Lumber {
  readonly name: string
  readonly kerf: number
  readonly stocks: readonly { usable: number; price: number; supply?: number; offcut?: boolean }[]
  readonly pieces: readonly (readonly [number, number])[]
  readonly runs?: readonly {
    name: string
    members: number
    points: readonly number[]
    jointPrice: number
    extraLengthPerJointEnd?: number
    maxMembersJointedAtOnePoint?: number
  }[]
  readonly optimum?: number | null
}

function piecesOf(list: readonly (readonly [number, number])[]): FixedPiece[] {
  return list.flatMap(([length, demand], row) =>
    Array.from({ length: demand }, (_, k) => ({
      id: `p${row}.${k}`,
      mark: `P${row + 1}`,
      length: length as Ticks,
    })),
  )
}

function jobOf(
  id: string,
  kerf: number,
  stock: StockOption[],
  pieces: FixedPiece[],
  runs: RunGroup[],
): CutJob {
  return {
    id,
    label: id,
    kerf: kerf as Ticks,
    endTrim: 0 as Ticks,
    stock,
    pieces,
    runs,
    handling: 0 as Cents,
    perCut: 0 as Cents,
    keep: null,
    objectives: ['least cost'],
  }
}

/** Published sets: one endless stock length; each board costs 1, so that the cost is the number of boards. */
export function singleStockJob(data: SingleStock): CutJob {
  const stock = {
    id: 'stock',
    length: data.capacity as Ticks,
    price: 1 as Cents,
    supply: null,
    offcut: false,
  }
  return jobOf(data.name, 0, [stock], piecesOf(data.items), [])
}

export function lumberJob(data: Lumber): CutJob {
  const stock = data.stocks.map((entry, s) => ({
    id: `${entry.offcut === true ? 'offcut' : 'stock'}-${s}`,
    length: entry.usable as Ticks,
    price: entry.price as Cents,
    supply: entry.supply ?? null,
    offcut: entry.offcut ?? false,
  }))
  const runs = (data.runs ?? []).map((run): RunGroup => {
    const length = run.points.at(-1) ?? 0
    return {
      id: run.name,
      label: run.name,
      members: Array.from({ length: run.members }, (_, k) => ({
        id: `${run.name}.${k}`,
        mark: `${run.name}-${k + 1}`,
      })),
      length: length as Ticks,
      points: run.points.slice(1, -1).map((at) => ({
        at: at as Ticks,
        label: `at ${at}`,
        cost: run.jointPrice as Cents,
        lap: (run.extraLengthPerJointEnd ?? 0) as Ticks,
        cap: run.maxMembersJointedAtOnePoint ?? null,
        excess: null,
      })),
      supports: run.points as readonly Ticks[],
      minSupports: 2,
      minPiece: 0 as Ticks,
      maxJoints: null,
      neighboursApart: false,
    }
  })
  return jobOf(data.name, data.kerf, stock, piecesOf(data.pieces), runs)
}

export function readInstances(path: string): Instance[] {
  return readFileSync(path, 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => {
      const data = JSON.parse(line) as SingleStock & Lumber
      const job = data.stocks === undefined ? singleStockJob(data) : lumberJob(data)
      return {
        name: data.name,
        set: data.set ?? basename(path, '.jsonl'),
        job,
        optimum: data.optimum ?? null,
      }
    })
}
