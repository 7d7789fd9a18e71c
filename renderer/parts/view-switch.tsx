import { useId } from 'react'
import './view-switch.css'

/** A few ways to look at the same thing, one of them chosen. */
export function ViewSwitch<View extends string>({
  legend,
  views,
  view,
  onView,
}: {
  /** for screen readers */
  readonly legend: string
  readonly views: readonly { readonly view: View; readonly name: string }[]
  readonly view: View
  onView(view: View): void
}) {
  const name = useId()
  return (
    <fieldset className="view-switch">
      <legend className="unseen">{legend}</legend>
      {views.map((each) => (
        <label key={each.view} className={each.view === view ? 'is-on' : undefined}>
          <input type="radio" name={name} checked={each.view === view} onChange={() => onView(each.view)} />
          {each.name}
        </label>
      ))}
    </fieldset>
  )
}
