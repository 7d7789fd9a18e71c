import { useId } from 'react'
import './order-choice.css'

/** In which order a list stands. */
export function OrderChoice<Order extends string>({
  of,
  orders,
  order,
  onOrder,
}: {
  /** what is listed, for screen readers */
  readonly of: string
  readonly orders: readonly (readonly [Order, string])[]
  readonly order: NoInfer<Order>
  onOrder(order: NoInfer<Order>): void
}) {
  const id = useId()
  return (
    <span className="order-choice entries">
      <label htmlFor={id}>Order</label>
      <select
        id={id}
        aria-label={`${of}: Order`}
        value={order}
        onChange={(event) => {
          const chosen = orders.find(([one]) => one === event.target.value)
          if (chosen !== undefined) onOrder(chosen[0])
        }}
      >
        {orders.map(([one, name]) => (
          <option key={one} value={one}>
            {name}
          </option>
        ))}
      </select>
    </span>
  )
}
