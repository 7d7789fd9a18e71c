import { Spotlight, type SpotlightActionGroupData, type SpotlightFilterFunction } from '@mantine/spotlight'
import { findByName } from '../state/find-by-name.ts'
import { useJob, useSession } from '../state/session-context.ts'
import type { Command } from './commands.ts'
import { shown } from './keys.ts'
import { MAC } from './platform.ts'

const MOST = 60
/** the closing menu gives the focus back to where it was; what a command focuses comes after that, ms */
const FOCUS_BACK = 40
const LATEST = 'Used last'

/** The command menu: every command, field and member by its name. Its shortcut is one of the commands. */
export function FindAnything({
  commands,
  onOpen,
}: {
  /** none while it is closed */
  readonly commands: readonly Command[]
  onOpen(open: boolean): void
}) {
  const session = useSession()
  const recent = useJob((state) => state.memory?.recent) ?? []
  const others = commands.filter((command) => command.id !== 'find')
  const actionOf = (command: Command) => ({
    id: command.id,
    label: command.label,
    disabled: !command.enabled,
    onClick: () => {
      session.rememberCommand(command.id)
      setTimeout(command.run, FOCUS_BACK)
    },
    ...(command.keys[0] ? { rightSection: <kbd className="keys">{shown(command.keys[0], MAC)}</kbd> } : {}),
  })
  const latest = recent.flatMap((id) => others.filter((command) => command.id === id))
  const groups: SpotlightActionGroupData[] = [
    { group: LATEST, actions: latest.map(actionOf) },
    ...[
      ...Map.groupBy(
        others.filter((command) => !latest.includes(command)),
        (command) => command.group,
      ),
    ].map(([group, list]) => ({ group, actions: list.map(actionOf) })),
  ].filter(({ actions }) => actions.length > 0)
  return (
    <Spotlight
      actions={groups}
      filter={filter}
      onSpotlightOpen={() => onOpen(true)}
      onSpotlightClose={() => onOpen(false)}
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

/** All in their groups while nothing is typed; then the best names first, whatever group they are of. */
const filter: SpotlightFilterFunction = (query, groups) => {
  if (query.trim() === '') return groups
  const all = groups.flatMap((each) => ('actions' in each ? each.actions : [each]))
  return [...findByName(query, all, ({ label = '' }) => label)]
}
