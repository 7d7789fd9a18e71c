import { defaultOf, fieldAt } from '../../../core/job/index.ts'
import { fieldText } from '../../state/field-value.ts'
import { AnswerField, type AnswerProps, answerId } from './answer-field.tsx'

/** A fact of the place that a person may not know: then the default is taken, and what follows from that is said. */
export function SiteFact(props: AnswerProps) {
  const spec = fieldAt(props.path)
  if (spec.kind === 'choice') return <AnswerField {...props} />
  const isUnknown = props.answer === undefined
  return (
    <div className="site-fact">
      <AnswerField {...props} />
      <label className="site-unknown">
        <input
          type="checkbox"
          aria-label={`${spec.label}: I do not know`}
          checked={isUnknown}
          onChange={() => {
            if (isUnknown) document.getElementById(answerId(props.path))?.focus()
            else props.onAnswer('')
          }}
        />
        I do not know
      </label>
      <p className="soft">
        {isUnknown
          ? `${fieldText(spec, defaultOf(spec))} is taken until you do, and the papers say that it is not confirmed.`
          : 'Who told you can be said under Site; the papers print it.'}
      </p>
    </div>
  )
}
