import { defaultOf, fieldAt } from '../../../core/job/index.ts'
import { ChoiceField } from '../../parts/choice-field.tsx'
import { TextField } from '../../parts/text-field.tsx'
import { feetNote, fieldText, nudged, printQuantity, readText } from '../../state/field-value.ts'

export interface AnswerProps {
  readonly path: string
  /** undefined while it is not answered: the default stands there, shown as such */
  readonly answer: string | undefined
  /** what stands there instead of the field's default */
  readonly instead?: string
  readonly fault: string | null
  /** an empty text takes the answer back */
  onAnswer(text: string): void
}

/** Id of the control that takes an answer, for the way to its fault. */
export function answerId(path: string): string {
  return `answer-${path.replaceAll('.', '-')}`
}

/** One answer: a length or load to type, or one of a few to choose. */
export function AnswerField({ path, answer, instead, fault, onAnswer }: AnswerProps) {
  const spec = fieldAt(path)
  const text = answer ?? instead ?? fieldText(spec, defaultOf(spec))
  const shared = {
    id: answerId(path),
    label: spec.label,
    stated: answer !== undefined,
    fault,
    help: spec.help,
    basis: spec.basis,
    onReset: () => onAnswer(''),
  }
  if (spec.kind === 'choice') {
    const choices = (spec.choices ?? []).map((value, index) => ({
      value,
      label: value === 'unknown' ? 'I do not know' : (spec.choiceLabels?.[index] ?? value),
    }))
    return <ChoiceField {...shared} value={text} choices={choices} onChoose={onAnswer} />
  }

  function nudge(steps: number) {
    const read = readText(spec, text)
    const from = read.ok ? read.value : defaultOf(spec)
    if (typeof from === 'number') onAnswer(printQuantity(spec, nudged(spec, from, steps)))
  }

  return (
    <TextField
      {...shared}
      text={text}
      note={answer === undefined ? '' : feetNote(spec, answer)}
      onText={onAnswer}
      onCommit={() => undefined}
      onGiveUp={() => undefined}
      {...(spec.kind === 'text' ? {} : { onNudge: nudge })}
      wide={spec.kind === 'text'}
    />
  )
}
