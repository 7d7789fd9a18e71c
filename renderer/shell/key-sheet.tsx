import { Modal } from '@mantine/core'
import type { Command } from './commands.ts'
import { shown } from './keys.ts'
import { MAC } from './platform.ts'

const ENTRY = [
  ['Arrow up, arrow down in a field', 'one step of the trade'],
  ['Shift with an arrow', 'four steps'],
  ['Enter or Tab', 'take the value'],
  ['Escape', 'give it up: the value before stays'],
  ['All deleted, then Enter; Delete in a choice', 'back to the default'],
] as const

const DRAWING = [
  ['+, −', 'larger, smaller; the wheel and pinching do the same'],
  ['0', 'the whole drawing'],
  ['Arrow keys', 'move a larger drawing; with an edge, a beam or a post chosen, one step of that'],
  ['Shift with an arrow, Alt with an arrow', 'four steps, a fine step'],
  ['Page up, page down on a handle', 'the next edge, beam or post'],
  ['Enter, Escape', 'let it go, give the move up'],
] as const

/** Every shortcut, from the one list of commands. */
export function KeySheet({
  commands,
  opened,
  onClose,
}: {
  readonly commands: readonly Command[]
  readonly opened: boolean
  onClose(): void
}) {
  const groups = [
    ...Map.groupBy(
      commands.filter((command) => command.keys.length > 0),
      (command) => command.group,
    ),
  ]
  return (
    <Modal
      opened={opened}
      onClose={onClose}
      title="Shortcuts"
      attributes={{ header: { role: 'none' } }}
      size="lg"
      overlayProps={{ backgroundOpacity: 0.4 }}
      closeButtonProps={{ 'aria-label': 'Close the shortcuts' }}
    >
      <div className="key-sheet">
        {groups.map(([group, list]) => (
          <section key={group}>
            <h3>{group}</h3>
            <dl>
              {list.map((command) => (
                <div key={command.id}>
                  <dt>{command.label.replace(/ “.*”$/, '')}</dt>
                  <dd>
                    {command.keys.map((keys) => (
                      <kbd key={keys} className="keys">
                        {shown(keys, MAC)}
                      </kbd>
                    ))}
                  </dd>
                </div>
              ))}
            </dl>
          </section>
        ))}
        <Keys title="In a field" rows={ENTRY} />
        <Keys title="In the drawing" rows={DRAWING} />
      </div>
    </Modal>
  )
}

function Keys({
  title,
  rows,
}: {
  readonly title: string
  readonly rows: readonly (readonly [string, string])[]
}) {
  return (
    <section>
      <h3>{title}</h3>
      <dl>
        {rows.map(([keys, what]) => (
          <div key={keys}>
            <dt>{keys}</dt>
            <dd>{what}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}
