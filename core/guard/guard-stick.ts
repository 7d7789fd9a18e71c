import type { LumberSize } from '../data/index.ts'
import type { Cause, Member, ProductClass, Role } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { Spot } from '../stairs/index.ts'
import type { Ticks } from '../units/index.ts'

/** Shorter differences are the noise of floating point, ticks. */
const NOISE = 1e-3

export interface GuardStick {
  readonly id: string
  readonly mark: string
  readonly role: Role
  readonly size: LumberSize
  readonly length: Ticks
  /** from above, in order round it */
  readonly corners: readonly Spot[]
  readonly levels: readonly [number, number]
  readonly cause: Cause
}

/** A piece of the guard's lumber at its place. */
export function guardStick(job: Job, stick: GuardStick): Member {
  const { id, mark, role, size, length, corners, levels, cause } = stick
  const { species, grade, treatment } = job.frame
  const product: ProductClass = { size, species, grade, treatment }
  const xs = corners.map(({ x }) => x)
  const ys = corners.map(({ y }) => y)
  const box = {
    x0: Math.min(...xs),
    x1: Math.max(...xs),
    y0: Math.min(...ys),
    y1: Math.max(...ys),
    z0: levels[0],
    z1: levels[1],
  }
  const isSquare = corners.every(
    ({ x, y }) =>
      (Math.abs(x - box.x0) < NOISE || Math.abs(x - box.x1) < NOISE) &&
      (Math.abs(y - box.y0) < NOISE || Math.abs(y - box.y1) < NOISE),
  )
  return {
    id,
    mark,
    role,
    product,
    length,
    ripTo: null,
    box,
    ...(isSquare ? {} : { plan: corners }),
    bearings: [],
    cause,
  }
}
