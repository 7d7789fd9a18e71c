import { spotlight } from '@mantine/spotlight'
import { memo, useDeferredValue, useEffect, useMemo, useState } from 'react'
import { useStore } from 'zustand'
import type { Session } from '../state/session.ts'
import { SessionContext } from '../state/session-context.ts'
import { Bench } from '../views/bench/bench.tsx'
import { Centre } from '../views/centre.tsx'
import { Sill } from '../views/sill/sill.tsx'
import { Banner } from './banner.tsx'
import { type Command, commandsFor, findable } from './commands.ts'
import { type DialogName, Dialogs } from './dialogs.tsx'
import { FindAnything } from './find-anything.tsx'
import { focusNextPane } from './next-pane.ts'
import { PrintHead } from './print-head.tsx'
import { TopBar } from './top-bar.tsx'
import { useDesktop } from './use-desktop.ts'
import { useRememberedTheme } from './use-remembered-theme.ts'
import { useShortcuts } from './use-shortcuts.ts'

// none has properties of the job: each hears of what concerns it, and not of every edit with the frame around it
const [OwnCentre, OwnBench, OwnSill, OwnFind] = [memo(Centre), memo(Bench), memo(Sill), memo(FindAnything)]
const NONE: readonly Command[] = []

/** The window: top bar, drawing with the tape under it, bench at the right, sill at the bottom. */
export function App({ session }: { readonly session: Session }) {
  const [dialog, setDialog] = useState<DialogName | null>(null)
  const [finding, setFinding] = useState(false)
  useRememberedTheme(session)
  // not deferred: a press right after an undo must find redo enabled
  const history = useStore(session.store, (state) => state.history)
  const hidden = useStore(session.store, (state) => state.look.hidden)
  const making = useStore(session.store, (state) => state.making)
  // the commands of the deck may come after the drawing: while something is drawn, the drawing goes first
  const design = useDeferredValue(useStore(session.store, (state) => state.design))
  const typing = useStore(
    session.store,
    (state) =>
      Object.values(state.drafts).some((draft) => draft.fault === null) && state.history.gesture !== null,
  )
  const notice = useStore(session.store, (state) => state.notice)
  const opened = useStore(session.store, (state) => state.open !== null)
  const refusedFile = useStore(session.store, (state) => state.refusedFile)
  const openFailure = useStore(session.store, (state) => state.openFailure)

  const name = design?.job.name
  useEffect(() => {
    document.title = name === undefined ? 'Kerfwright' : `${name} · Kerfwright`
  }, [name])

  useEffect(() => {
    if (refusedFile !== null) setDialog('jobs')
  }, [refusedFile])

  useEffect(() => {
    void session.openLast()
  }, [session])

  const commands = useMemo(() => {
    const now = session.store.getState()
    const state = { ...now, history, making, design, look: { ...now.look, hidden } }
    return commandsFor(
      session,
      {
        openFind: spotlight.open,
        openKeys: () => setDialog('keys'),
        openJobs: () => setDialog('jobs'),
        openNewJob: () => setDialog('new job'),
        openSettings: () => setDialog('settings'),
        nextPane: focusNextPane,
        setTheme: (theme) => session.remember({ theme }),
      },
      state,
    )
  }, [session, history, making, design, hidden])
  // hundreds of members: named while they are looked for, not at every edit
  const all = useMemo(
    () => (finding ? [...commands, ...(design ? findable(session, session.store.getState()) : [])] : NONE),
    [finding, commands, design, session],
  )
  useShortcuts(commands, typing)
  useDesktop(session, commands, typing)

  if (openFailure !== null && !opened)
    return <NoJob message={openFailure} retry={() => void session.openLast()} />
  return (
    <SessionContext value={session}>
      <div className="window">
        <PrintHead />
        <TopBar commands={commands} />
        <Banner />
        <main className="centre" aria-label="Drawing">
          <h1 className="unseen">Kerfwright</h1>
          <OwnCentre />
        </main>
        <OwnBench />
        <OwnSill />
        <p className={notice === null ? 'notice' : 'notice is-shown'} role="status">
          {notice}
        </p>
      </div>
      <OwnFind commands={all} onOpen={setFinding} />
      <Dialogs open={dialog} commands={dialog === 'keys' ? commands : NONE} show={setDialog} />
    </SessionContext>
  )
}

function NoJob({ message, retry }: { readonly message: string; retry(): void }) {
  return (
    <main className="no-job">
      <h1>No job could be opened</h1>
      <p>{message}</p>
      <p>Nothing was changed on disk.</p>
      <button type="button" className="button button-main" onClick={retry}>
        Try again
      </button>
    </main>
  )
}
