import { type FormEvent, useId, useState } from 'react'
import type { ProductClass } from '../../../../core/frame/index.ts'
import { productKey, productName } from '../../../../core/pricing/index.ts'
import { parseLength } from '../../../../core/units/index.ts'
import { useJob, useSession } from '../../../state/session-context.ts'
import '../../../parts/field.css'

/** Most that are put on the rack at once. */
const MOST = 500

/** Offcuts put on the rack by hand: of a product of the price book, this job's first, at a length. */
export function AddOffcuts() {
  const session = useSession()
  const book = useJob((state) => state.prices?.book ?? null)
  const id = useId()
  const [chosen, setChosen] = useState('')
  const [length, setLength] = useState('')
  const [count, setCount] = useState('1')
  const [fault, setFault] = useState<string | null>(null)
  const plans = useJob((state) => state.estimate?.plans)
  const own = new Set(plans?.map((planned) => productKey(planned.product)))
  const listed = book?.lumber.map((entry) => entry.product) ?? []
  const isOwn = (each: ProductClass) => own.has(productKey(each))
  const products = [...listed.filter(isOwn), ...listed.filter((each) => !isOwn(each))]
  const product = products.find((each) => productKey(each) === chosen) ?? products[0]
  if (product === undefined) return null

  async function add(event: FormEvent) {
    event.preventDefault()
    if (product === undefined) return
    const read = parseLength(length)
    if (!read.ok) return setFault(`${read.error.message}; ${read.error.fix}.`)
    if (read.value <= 0)
      return setFault('An offcut is longer than nothing: write a length such as 4 ft 6 in.')
    const many = Number(count)
    if (!Number.isInteger(many) || many < 1 || many > MOST)
      return setFault(`"${count}" is no number of offcuts: write a whole number from 1 to ${MOST}.`)
    setFault(null)
    const added = await session.addOffcuts({ product, length: read.value, count: many, fromJob: '' })
    if (added) setLength('')
  }

  return (
    <form className="entry-form rack-add" onSubmit={(event) => void add(event)}>
      <label>
        <span>Product</span>
        <select value={productKey(product)} onChange={(event) => setChosen(event.target.value)}>
          {products.map((each) => (
            <option key={productKey(each)} value={productKey(each)}>
              {productName(each)}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>Length</span>
        <input
          value={length}
          placeholder="4 ft 6 in"
          autoComplete="off"
          spellCheck={false}
          aria-invalid={fault !== null}
          aria-describedby={fault === null ? undefined : `${id}-fault`}
          onChange={(event) => setLength(event.target.value)}
        />
      </label>
      <label>
        <span>How many</span>
        <input
          value={count}
          inputMode="numeric"
          autoComplete="off"
          onChange={(event) => setCount(event.target.value)}
        />
      </label>
      <button type="submit" className="button">
        Put on the rack
      </button>
      {fault !== null && (
        <p id={`${id}-fault`} className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {fault}
        </p>
      )}
    </form>
  )
}
