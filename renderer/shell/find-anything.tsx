import { Spotlight, type SpotlightActionGroupData } from '@mantine/spotlight'
import type { Command } from './commands.ts'
import { shown } from './keys.ts'
import { MAC } from './platform.ts'

const MOST = 60
/** the closing menu gives the focus back to where it was; what a command focuses comes after that, ms */
const FOCUS_BACK = 40

/** The command menu: every command, field and member by its name. Its shortcut is one of the commands. */
export function FindAnything({ commands }: { readonly commands: readonly Command[] }) {
  const groups: SpotlightActionGroupData[] = [...Map.groupBy(commands, (command) => command.group)].map(
    ([group, list]) => ({
      group,
      actions: list
        .filter((command) => command.id !== 'find')
        .map((command) => ({
          id: command.id,
          label: command.label,
          disabled: !command.enabled,
          onClick: () => setTimeout(command.run, FOCUS_BACK),
          ...(command.keys[0]
            ? { rightSection: <kbd className="keys">{shown(command.keys[0], MAC)}</kbd> }
            : {}),
        })),
    }),
  )
  return (
    <Spotlight
      actions={groups}
      attributes={{ content: { 'aria-label': 'Find anything' } }}
      shortcut={null}
      transitionProps={{ duration: 0 }}
      overlayProps={{ blur: 0, backgroundOpacity: 0.4 }}
      limit={MOST}
      scrollable
      maxHeight={460}
      nothingFound="Nothing has that name."
      searchProps={{ placeholder: 'A command, a field, a member', 'aria-label': 'Find anything' }}
    />
  )
}
