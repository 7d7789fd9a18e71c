import { sectionOf } from '../data/index.ts'
import { setbacksKey } from './catalogue.ts'
import type { BeamChoice, Choice, JoistChoice } from './types.ts'

type Side = 'front' | 'rear'

interface WeakJoists extends JoistChoice {
  readonly plies: readonly [number, number]
}
interface WeakBeam extends BeamChoice {
  /** of the beam on the other side */
  readonly others: number
}

/**
 * Parts of a rectangle that are too weak, and so every part is that is weaker still: joists shallower, farther apart or
 * between thinner beams; beams shallower, of fewer plies or on fewer posts. That a larger section never carries less and
 * a longer span never less load is shown for the rules themselves by tests of their own.
 */
export class WeakParts {
  readonly #joists = new Map<string, WeakJoists[]>()
  readonly #beams = new Map<string, WeakBeam[]>()

  /** @param id of a check that fails: those of other parts are left alone */
  add(id: string, choice: Choice): void {
    const { joist, front, rear } = choice
    if (id === 'joist-span') {
      listIn(this.#joists, setbacksKey(choice.setbacks)).push({
        ...joist,
        plies: [front.plies, rear?.plies ?? 0],
      })
    }
    if (id === 'beam-span-front') this.#addBeam('front', choice, front)
    if (id === 'beam-span-rear' && rear !== null) this.#addBeam('rear', choice, rear)
  }

  #addBeam(side: Side, choice: Choice, beam: BeamChoice): void {
    listIn(this.#beams, `${side} ${setbacksKey(choice.setbacks)}`).push({
      ...beam,
      others: othersOf(side, choice),
    })
  }

  hasJoists(choice: Choice): boolean {
    const { joist, front, rear } = choice
    const weak = this.#joists.get(setbacksKey(choice.setbacks)) ?? []
    return weak.some(
      ({ size, spacing, plies }) =>
        depthOf(joist.size) <= depthOf(size) &&
        joist.spacing >= spacing &&
        front.plies <= plies[0] &&
        (rear?.plies ?? 0) <= plies[1],
    )
  }

  hasBeam(side: Side, choice: Choice): boolean {
    const beam = choice[side]
    if (beam === null) return false
    const weak = this.#beams.get(`${side} ${setbacksKey(choice.setbacks)}`) ?? []
    return weak.some(
      ({ size, plies, posts, others }) =>
        depthOf(beam.size) <= depthOf(size) &&
        beam.plies <= plies &&
        beam.posts <= posts &&
        othersOf(side, choice) <= others,
    )
  }
}

function othersOf(side: Side, { front, rear }: Choice): number {
  return side === 'front' ? (rear?.plies ?? 0) : front.plies
}

function depthOf(size: JoistChoice['size']): number {
  return sectionOf(size).depth
}

function listIn<One>(lists: Map<string, One[]>, key: string): One[] {
  const list = lists.get(key) ?? []
  lists.set(key, list)
  return list
}
