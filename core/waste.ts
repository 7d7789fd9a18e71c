import type { Costed } from './cost-design.ts'

/** Lengths of bought board by what becomes of them, in ticks; offcuts on hand that are cut from count as bought. */
export interface Waste {
  readonly used: number
  readonly kerf: number
  readonly trim: number
  readonly kept: number
  readonly thrown: number
  /** whole boards bought beyond the plans */
  readonly spares: number
  /** all of it together */
  readonly bought: number
  /** what is in no piece ÷ all of it, in 1/100 % */
  readonly share: number
}

/** Waste of a whole order by cause. Spares are whole boards that the plans do not need, so they count in full. */
export function wasteOf({ plans, spares }: Pick<Costed, 'plans' | 'spares'>): Waste {
  const sum = (cause: 'used' | 'kerf' | 'trim' | 'kept' | 'thrown'): number =>
    plans.reduce((total, { plan }) => total + plan.waste[cause], 0)
  const causes = {
    used: sum('used'),
    kerf: sum('kerf'),
    trim: sum('trim'),
    kept: sum('kept'),
    thrown: sum('thrown'),
    spares: (spares?.lines ?? []).reduce((total, { count, length }) => total + count * length, 0),
  }
  const bought = Object.values(causes).reduce((total, length) => total + length, 0)
  return {
    ...causes,
    bought,
    share: bought === 0 ? 0 : Math.round((10_000 * (bought - causes.used)) / bought),
  }
}
