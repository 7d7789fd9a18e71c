import { type Cents, cents } from '../../units/index.ts'

/** What a state lets a contractor ask for before work begins. */
interface DepositLimit {
  /** two letters */
  readonly state: string
  readonly name: string
  /** the rule in words, with the statute it stands in */
  readonly words: string
  readonly limit: (price: Cents) => Cents
}

const third = (price: Cents): Cents => cents(Math.floor(price / 3))

/**
 * Limits on deposits for work on a home. From memory, statutes named so that they can be looked up; material ordered
 * specially may raise them in some states. Rounded down to the cent, so that a deposit at the limit is never over it.
 */
export const DEPOSIT_LIMITS: readonly DepositLimit[] = [
  {
    state: 'CA',
    name: 'California',
    words: 'the lesser of $1,000 or 10 % (Business and Professions Code 7159.5)',
    limit: (price) => cents(Math.min(100_000, Math.floor(price / 10))),
  },
  {
    state: 'MD',
    name: 'Maryland',
    words: 'a third (Business Regulation 8-617)',
    limit: third,
  },
  {
    state: 'MA',
    name: 'Massachusetts',
    words: 'a third, or what specially ordered material costs where that is more (General Laws c. 142A, 2)',
    limit: third,
  },
  { state: 'ME', name: 'Maine', words: 'a third (10 M.R.S. 1487)', limit: third },
  {
    state: 'PA',
    name: 'Pennsylvania',
    words: 'a third, and the cost of specially ordered material (73 P.S. 517.9)',
    limit: third,
  },
]

export function depositLimit(state: string): DepositLimit | null {
  return DEPOSIT_LIMITS.find((one) => one.state === state) ?? null
}
