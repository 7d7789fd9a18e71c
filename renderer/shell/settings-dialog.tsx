import { Modal } from '@mantine/core'
import { ChoiceField } from '../parts/choice-field.tsx'
import { useJob, useSession } from '../state/session-context.ts'
import type { Place } from '../state/session-types.ts'
import { TemplateChoice } from '../views/jobs/template-choice.tsx'

const THEMES = [
  { value: 'auto', label: 'as the system has it' },
  { value: 'light', label: 'light' },
  { value: 'dark', label: 'dark' },
] as const

/** What holds for the program and not for one job; kept from start to start. */
export function SettingsDialog({ opened, onClose }: { readonly opened: boolean; onClose(): void }) {
  return (
    <Modal
      opened={opened}
      onClose={onClose}
      title="Settings"
      attributes={{ header: { role: 'none' } }}
      size="md"
      overlayProps={{ backgroundOpacity: 0.4 }}
      closeButtonProps={{ 'aria-label': 'Close the settings' }}
    >
      <Settings onClose={onClose} />
    </Modal>
  )
}

function Settings({ onClose }: { onClose(): void }) {
  const session = useSession()
  const theme = useJob((state) => state.memory?.theme ?? 'auto')
  const notes = useJob((state) => state.memory?.notes ?? true)
  const go = (place: Place) => {
    onClose()
    session.go(place)
  }
  return (
    <div className="settings">
      <ChoiceField
        id="settings-theme"
        label="Light or dark"
        value={theme}
        choices={THEMES}
        stated={theme !== 'auto'}
        fault={null}
        help="How the window looks; papers are always white."
        basis="as the system has it"
        onChoose={(chosen) => {
          const found = THEMES.find(({ value }) => value === chosen)
          if (found) session.remember({ theme: found.value })
        }}
        onReset={() => session.remember({ theme: 'auto' })}
      />
      <TemplateChoice id="settings-template" />
      <label className="settings-check">
        <input
          type="checkbox"
          checked={notes}
          onChange={({ target }) => session.remember({ notes: target.checked })}
        />
        Tell at each work place what it is for
      </label>
      <p className="settings-ways">
        <button type="button" className="button" onClick={() => go('price')}>
          Price book
        </button>
        <button type="button" className="button" onClick={() => go('papers')}>
          Your firm on the papers
        </button>
      </p>
      <p className="soft">
        These are kept on this machine with your jobs. Prices and firm hold for every job; what one job is
        built and priced by stands in its own fields.
      </p>
    </div>
  )
}
