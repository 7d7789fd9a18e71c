import { type ReactNode, useId, useState } from 'react'
import { type BookEdit, type PriceBook, productKey, productName } from '../../../core/pricing/index.ts'
import { useSession } from '../../state/session-context.ts'
import { sentence } from './book-grid.tsx'
import type { BookLine } from './book-table.ts'

interface Typed {
  readonly key: string
  readonly label: string
  readonly choices?: readonly { readonly value: string; readonly label: string }[]
}

/** Another supplier's price of the board or good in whose row one stands. */
export function AddPrice({
  book,
  line,
  suppliers,
}: {
  readonly book: PriceBook
  readonly line: BookLine | null
  readonly suppliers: readonly string[]
}) {
  const row = line?.row
  const name = line?.cells[0] ?? ''
  if (row === undefined || (row.of !== 'board' && row.of !== 'good'))
    return <p className="soft book-add">Choose a row to add another supplier’s price of it.</p>
  const others = suppliers.filter((one) => one !== line?.supplier)
  if (others.length === 0)
    return (
      <p className="soft book-add">
        {book.supplier} is the one supplier. Add another under Suppliers, and each thing can have a price of
        both.
      </p>
    )
  return (
    <AddForm
      title={`Price of ${name} at another supplier`}
      fields={[
        { key: 'supplier', label: 'Supplier', choices: others.map((value) => ({ value, label: value })) },
        { key: 'price', label: 'Price' },
        { key: 'code', label: 'Code' },
      ]}
      editOf={({ supplier = '', price = '', code = '' }) => ({
        kind: 'add price',
        row: { ...row, supplier },
        price,
        code,
      })}
    />
  )
}

export function AddLength({
  book,
  suppliers,
}: {
  readonly book: PriceBook
  readonly suppliers: readonly string[]
}) {
  return (
    <AddForm
      title="Another length"
      fields={[
        {
          key: 'product',
          label: 'Board',
          choices: book.lumber.map(({ product }) => ({
            value: productKey(product),
            label: productName(product),
          })),
        },
        { key: 'length', label: 'Length' },
        { key: 'supplier', label: 'Supplier', choices: suppliers.map((value) => ({ value, label: value })) },
        { key: 'price', label: 'Price' },
        { key: 'code', label: 'Code' },
      ]}
      editOf={({ product = '', length = '', supplier = '', price = '', code = '' }) => ({
        kind: 'add length',
        product,
        length,
        supplier,
        price,
        code,
      })}
    />
  )
}

export function AddSupplier() {
  return (
    <AddForm
      title="Another supplier"
      fields={[
        { key: 'name', label: 'Name' },
        { key: 'delivery', label: 'One delivery' },
        { key: 'freeFrom', label: 'Free from' },
      ]}
      editOf={({ name = '', delivery = '', freeFrom = '' }) => ({
        kind: 'add supplier',
        name,
        delivery,
        freeFrom,
      })}
    />
  )
}

/** A few entries that make one row; what was typed stays until it is taken. */
function AddForm({
  title,
  fields,
  editOf,
}: {
  readonly title: string
  readonly fields: readonly Typed[]
  editOf(typed: { readonly [key: string]: string }): BookEdit
}) {
  const session = useSession()
  const id = useId()
  const [typed, setTyped] = useState<{ readonly [key: string]: string }>({})
  const [fault, setFault] = useState<string | null>(null)

  async function add() {
    const chosen = Object.fromEntries(
      fields.map(({ key, choices }) => [
        key,
        choices === undefined || choices.some(({ value }) => value === typed[key])
          ? (typed[key] ?? '')
          : (choices[0]?.value ?? ''),
      ]),
    )
    const faults = await session.editPrices([editOf(chosen)])
    if (faults === null) return
    const [first] = faults
    setFault(first === undefined ? null : sentence(first))
    if (first === undefined)
      setTyped(
        Object.fromEntries(
          fields.filter(({ choices }) => choices !== undefined).map(({ key }) => [key, typed[key] ?? '']),
        ),
      )
  }

  return (
    <form
      className="book-add"
      aria-label={title}
      onSubmit={(event) => {
        event.preventDefault()
        void add()
      }}
    >
      <span className="book-add-title">{title}</span>
      {fields.map((field) => (
        <label key={field.key} htmlFor={`${id}-${field.key}`}>
          {field.label}
          <Entry
            id={`${id}-${field.key}`}
            field={field}
            value={typed[field.key] ?? ''}
            describedBy={fault === null ? undefined : `${id}-fault`}
            onType={(text) => {
              setTyped({ ...typed, [field.key]: text })
              setFault(null)
            }}
          />
        </label>
      ))}
      <button type="submit" className="button">
        Add
      </button>
      {fault !== null && (
        <p id={`${id}-fault`} className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {fault}
        </p>
      )}
    </form>
  )
}

function Entry({
  id,
  field: { choices },
  value,
  describedBy,
  onType,
}: {
  readonly id: string
  readonly field: Typed
  readonly value: string
  readonly describedBy: string | undefined
  onType(text: string): void
}): ReactNode {
  if (choices === undefined)
    return (
      <input
        id={id}
        value={value}
        maxLength={200}
        spellCheck={false}
        autoComplete="off"
        aria-describedby={describedBy}
        onChange={(event) => onType(event.target.value)}
      />
    )
  return (
    <select
      id={id}
      value={value === '' ? choices[0]?.value : value}
      onChange={(event) => onType(event.target.value)}
    >
      {choices.map((choice) => (
        <option key={choice.value} value={choice.value}>
          {choice.label}
        </option>
      ))}
    </select>
  )
}
