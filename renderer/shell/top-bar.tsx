import { CircleQuestionMark, Redo2, Search } from 'lucide-react'
import { printClock } from '../state/print.ts'
import { useJob, useSession } from '../state/session-context.ts'
import { PLACES } from '../state/session-types.ts'
import type { Command } from './commands.ts'
import { PLACE_NAMES } from './commands.ts'
import { JobsMenu } from './jobs-menu.tsx'
import { shown } from './keys.ts'
import { MAC } from './platform.ts'
import { ThemeButton } from './theme-button.tsx'
import './top-bar.css'

/** The job, its work places, undo, and the way to everything else. */
export function TopBar({ commands }: { readonly commands: readonly Command[] }) {
  const session = useSession()
  const place = useJob((state) => state.place)
  const name = useJob((state) => state.design?.job.name ?? '')
  const by = (id: string) => commands.find((command) => command.id === id)
  const undo = by('undo')
  const redo = by('redo')
  return (
    <header className="top-bar">
      <JobsMenu name={name} onNew={() => by('new-job')?.run()} onAll={() => by('jobs')?.run()} />
      <Saved />
      <nav className="places" aria-label="Work places">
        {PLACES.map((each) => (
          <button
            key={each}
            type="button"
            data-name={PLACE_NAMES[each]}
            aria-current={each === place ? 'page' : undefined}
            onClick={() => session.go(each)}
          >
            {PLACE_NAMES[each]}
          </button>
        ))}
      </nav>
      <div className="top-tools">
        <button
          type="button"
          className="button top-undo"
          disabled={!undo?.enabled}
          title={undo?.label}
          onClick={undo?.run}
        >
          {undo?.label ?? 'Undo'}
        </button>
        <button
          type="button"
          className="button icon"
          disabled={!redo?.enabled}
          aria-label={redo?.label ?? 'Redo'}
          title={redo?.label}
          onClick={redo?.run}
        >
          <Redo2 size={16} aria-hidden="true" />
        </button>
        <button type="button" className="button top-find" onClick={by('find')?.run}>
          <Search size={15} aria-hidden="true" />
          Find anything <kbd>{shown('Ctrl+K', MAC)}</kbd>
        </button>
        <ThemeButton />
        <button
          type="button"
          className="button icon"
          aria-label="Help"
          title={`Help: ${shown('F1', MAC)}`}
          onClick={by('help')?.run}
        >
          <CircleQuestionMark size={16} aria-hidden="true" />
        </button>
      </div>
    </header>
  )
}

function Saved() {
  const saving = useJob((state) => state.saving)
  const text = {
    saved: () => (saving.state === 'saved' ? `saved ${printClock(saving.at)}` : ''),
    unsaved: () => 'saving',
    failed: () => '▲ not saved',
    conflict: () => '▲ not saved',
  }[saving.state]()
  return (
    <span
      className={saving.state === 'failed' || saving.state === 'conflict' ? 'saved saved-failed' : 'saved'}
      role="status"
    >
      {text}
    </span>
  )
}
