import { useState } from 'react'
import type { DayState } from '../../../../core/cutting/index.ts'
import type { Planned } from '../../../../core/estimate-types.ts'
import { productKey } from '../../../../core/pricing/index.ts'
import { cents, printMoney, printShare, type Result } from '../../../../core/units/index.ts'
import { atYard } from '../../../state/saw-day.ts'
import { useJob } from '../../../state/session-context.ts'
import { printStock } from '../print-stock.ts'
import { readLeft, readPrice, readRefund } from './read-entries.ts'

/** What has come, and what the yard has left of each length and asks for it now. */
export function YardForm({
  planned,
  day,
  onDay,
}: {
  readonly planned: Planned
  readonly day: DayState
  onDay(day: DayState): void
}) {
  const book = useJob((state) => state.prices?.book ?? null)
  const key = productKey(planned.product)
  const stock = book?.lumber.find((entry) => productKey(entry.product) === key)?.stock ?? []
  const entryOf = (stockId: string) =>
    day.yard.find((entry) => entry.stockId === stockId) ?? { stockId, left: null, price: null }
  return (
    <details className="folded day-yard entry-form">
      <summary>The yard: what has come, what it is out of, other prices</summary>
      <label className="day-check">
        <input
          type="checkbox"
          checked={day.bought === 'all'}
          onChange={(event) => onDay({ ...day, bought: event.target.checked ? 'all' : [] })}
        />{' '}
        The whole order has come
      </label>
      {day.bought !== 'all' && (
        <p className="soft">Of what has not come, only boards that are sawn or culled are there.</p>
      )}
      <table className="table">
        <thead>
          <tr>
            <th scope="col">Length</th>
            <th scope="col">Boards left at the yard</th>
            <th scope="col">Price now</th>
          </tr>
        </thead>
        <tbody>
          {stock.map(({ code, length, price }) => {
            const entry = entryOf(code)
            return (
              <tr key={code}>
                <th scope="row">{printStock(length)}</th>
                <td>
                  <Entry
                    label={`Boards of ${printStock(length)} left at the yard`}
                    hint="enough"
                    said={entry.left === null ? '' : `${entry.left}`}
                    read={readLeft}
                    onValue={(left) => onDay(atYard(day, { ...entry, left }))}
                  />
                </td>
                <td>
                  <Entry
                    label={`Price of ${printStock(length)} now`}
                    hint={printMoney(price)}
                    said={entry.price === null ? '' : printMoney(cents(entry.price))}
                    read={readPrice}
                    onValue={(now) => onDay(atYard(day, { ...entry, price: now }))}
                  />
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
      <div className="day-refund">
        <span aria-hidden="true">The yard pays back for a whole board, of its price</span>
        <Entry
          label="The yard pays back for a whole board, of its price"
          hint="0 %"
          said={day.refund === 0 ? '' : printShare(day.refund)}
          read={readRefund}
          onValue={(refund) => onDay({ ...day, refund })}
        />
      </div>
    </details>
  )
}

/** A text that is taken when the focus leaves it or on Enter; a fault stands beside it and the text stays. */
function Entry<T>({
  label,
  hint,
  said,
  read,
  onValue,
}: {
  readonly label: string
  readonly hint: string
  readonly said: string
  read(text: string): Result<T, string>
  onValue(value: T): void
}) {
  const [text, setText] = useState<string | null>(null)
  const [fault, setFault] = useState<string | null>(null)
  function take() {
    if (text === null) return
    const value = read(text)
    setFault(value.ok ? null : value.error)
    if (!value.ok) return
    setText(null)
    onValue(value.value)
  }
  return (
    <>
      <input
        aria-label={label}
        placeholder={hint}
        value={text ?? said}
        autoComplete="off"
        aria-invalid={fault !== null}
        onChange={(event) => setText(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take()
        }}
      />
      {fault !== null && (
        <p className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {fault}
        </p>
      )}
    </>
  )
}
