import type { Estimate } from '../../core/estimate-types.ts'
import { type Figures, figuresOf } from './figures.ts'

/** How far the figures of the sill moved with the last step. */
export interface News {
  readonly cost: number
  readonly price: number
  readonly perSquareFoot: number
  readonly boards: number
  readonly joints: number
  readonly crewHours: number
}

/** Differences between two estimates, or null where either has no total or nothing moved. */
export function newsBetween(before: Estimate | null, after: Estimate | null): News | null {
  const a = before && figuresOf(before)
  const b = after && figuresOf(after)
  if (!a || !b) return null
  const moved = (key: keyof News & keyof Figures) => b[key] - a[key]
  const news: News = {
    cost: moved('cost'),
    price: moved('price'),
    perSquareFoot: moved('perSquareFoot'),
    boards: moved('boards'),
    joints: moved('joints'),
    crewHours: moved('crewHours'),
  }
  return Object.values(news).some((value) => value !== 0) ? news : null
}
