import { type ReactNode, useId, useState } from 'react'
import { lumberGrades, lumberSizes, lumberSpecies, lumberTreatments } from '../../../core/data/index.ts'
import {
  type BookEdit,
  goodsWithoutPrice,
  type PriceBook,
  SPECIES_NAMES,
  suppliersOf,
} from '../../../core/pricing/index.ts'
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
  line: { row, supplier, cells },
}: {
  readonly book: PriceBook
  readonly line: BookLine
}) {
  if (row.of !== 'board' && row.of !== 'good') return null
  const others = suppliersOf(book).filter((one) => one !== supplier)
  if (others.length === 0)
    return (
      <p className="soft">
        {book.supplier} is the one supplier. Add another under Suppliers, and each thing can have a price of
        both.
      </p>
    )
  return (
    <AddForm
      key={JSON.stringify(row)}
      title={`Price of ${cells[0] ?? ''} at another supplier`}
      fields={[
        { key: 'supplier', label: 'Supplier', choices: named(others) },
        { key: 'price', label: 'Price' },
        { key: 'code', label: 'Code' },
      ]}
      editOf={({ supplier: other = '', price = '', code = '' }) => ({
        kind: 'add price',
        row: { ...row, supplier: other },
        price,
        code,
      })}
    />
  )
}

/** Another length of one board. */
export function AddLength({
  book,
  product,
  name,
}: {
  readonly book: PriceBook
  readonly product: string
  readonly name: string
}) {
  return (
    <AddForm
      key={product}
      title={`Another length of ${name}`}
      fields={[{ key: 'length', label: 'Length' }, ...priceFields(book)]}
      editOf={({ length = '', supplier = '', price = '', code = '' }) => ({
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

/** A board that the book does not have yet. */
export function AddProduct({ book }: { readonly book: PriceBook }) {
  return (
    <AddForm
      title="Another board"
      fields={[
        { key: 'size', label: 'Size', choices: named(lumberSizes) },
        {
          key: 'species',
          label: 'Species',
          choices: lumberSpecies.map((value) => ({ value, label: SPECIES_NAMES[value] })),
        },
        { key: 'grade', label: 'Grade', choices: named(lumberGrades) },
        { key: 'treatment', label: 'Treatment', choices: named(lumberTreatments) },
        { key: 'useClass', label: 'Use class' },
        { key: 'length', label: 'First length' },
        ...priceFields(book),
      ]}
      editOf={({
        size = '',
        species = '',
        grade = '',
        treatment = '',
        useClass = '',
        length = '',
        supplier = '',
        price = '',
        code = '',
      }) => ({
        kind: 'add product',
        size,
        species,
        grade,
        treatment,
        useClass,
        length,
        supplier,
        price,
        code,
      })}
    />
  )
}

/** A price of a good that jobs may need and the book has none of. */
export function AddGood({ book }: { readonly book: PriceBook }) {
  const missing = goodsWithoutPrice(book)
  if (missing.length === 0)
    return (
      <p className="soft">
        Every good that a job can need has a price. What else one takes stands with the job as an allowance,
        under Price.
      </p>
    )
  return (
    <AddForm
      title="A good that has no price"
      fields={[
        {
          key: 'sku',
          label: 'Good',
          choices: missing.map(({ sku, label, unit }) => ({ value: sku, label: `${label}, ${unit}` })),
        },
        ...priceFields(book),
      ]}
      editOf={({ sku = '', supplier = '', price = '', code = '' }) => ({
        kind: 'add good',
        sku,
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

function named(values: readonly string[]): NonNullable<Typed['choices']> {
  return values.map((value) => ({ value, label: value }))
}

function priceFields(book: PriceBook): readonly Typed[] {
  return [
    { key: 'supplier', label: 'Supplier', choices: named(suppliersOf(book)) },
    { key: 'price', label: 'Price' },
    { key: 'code', label: 'Code' },
  ]
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
      className="book-add entries"
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
