import type { FieldSpec } from '../../../core/job/index.ts'
import { ChoiceField } from '../../parts/choice-field.tsx'
import { TextField } from '../../parts/text-field.tsx'
import { SpotsField } from './spots-field.tsx'
import { useField } from './use-field.ts'

/** Id of a field's control in the page, for commands that go there. */
export function fieldId(path: string): string {
  return `field-${path.replaceAll('.', '-')}`
}

/** The control that fits a field of the job. */
export function JobField({
  spec,
  label = spec.label,
}: {
  readonly spec: FieldSpec
  readonly label?: string
}) {
  const field = useField(spec)
  const shared = {
    id: fieldId(spec.path),
    label,
    stated: field.stated,
    fault: field.fault,
    help: spec.help,
    basis: spec.basis,
    onReset: field.onReset,
  }
  if (spec.kind === 'ground') return <SpotsField spec={spec} id={shared.id} />
  if (spec.kind === 'choice') {
    const choices = (spec.choices ?? []).map((value, index) => ({
      value,
      label: spec.choiceLabels?.[index] ?? value,
    }))
    return <ChoiceField {...shared} value={field.text} choices={choices} onChoose={field.choose} />
  }
  if (spec.kind === 'flag') {
    const choices = [
      { value: 'true', label: 'yes' },
      { value: 'false', label: 'no' },
    ]
    return (
      <ChoiceField
        {...shared}
        value={field.text}
        choices={choices}
        onChoose={(value) => field.choose(value === 'true')}
      />
    )
  }
  return (
    <TextField
      {...shared}
      text={field.text}
      note={field.note}
      wide={spec.kind === 'text'}
      onText={field.onText}
      onCommit={field.onCommit}
      onGiveUp={field.onGiveUp}
      onNudge={spec.kind === 'text' ? undefined : field.onNudge}
    />
  )
}
