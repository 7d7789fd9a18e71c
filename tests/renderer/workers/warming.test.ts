import { describe, expect, it } from 'vitest'
import { Warming } from '../../../renderer/workers/warming.ts'

/** A queue of what is to run later, run by hand. */
function queue() {
  const waiting: (() => void)[] = []
  const runAll = () => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) next()
  }
  return { later: (run: () => void) => void waiting.push(run), runAll, waiting }
}

describe('warming the worker that makes designs', () => {
  it('repeats the first design a few times, and then no more', () => {
    const { later, runAll } = queue()
    let runs = 0
    const warming = new Warming(later)
    warming.made(100, () => (runs += 1))
    runAll()
    expect(runs).toBeGreaterThan(1)
    const before = runs
    warming.made(101, () => (runs += 1))
    runAll()
    expect(runs).toBe(before)
  })

  it('waits in line behind whatever is asked for, one run at a time', () => {
    const { later, waiting } = queue()
    const warming = new Warming(later)
    warming.made(100, () => undefined)
    warming.made(101, () => undefined)
    expect(waiting).toHaveLength(1)
  })

  it('repeats the latest statement, not one that has been edited since', () => {
    const { later, runAll } = queue()
    const ran: string[] = []
    const warming = new Warming(later)
    warming.made(100, () => ran.push('first'))
    warming.made(101, () => ran.push('second'))
    runAll()
    expect(new Set(ran)).toEqual(new Set(['second']))
  })

  it('begins again where a deck is far larger than any before', () => {
    const { later, runAll } = queue()
    let runs = 0
    const warming = new Warming(later)
    warming.made(100, () => undefined)
    runAll()
    warming.made(400, () => (runs += 1))
    runAll()
    expect(runs).toBeGreaterThan(1)
  })
})
