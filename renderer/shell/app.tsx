import { spotlight } from '@mantine/spotlight'
import { memo, useDeferredValue, useEffect, useMemo, useState } from 'react'
import { useStore } from 'zustand'
import type { Session } from '../state/session.ts'
import { SessionContext } from '../state/session-context.ts'
import { Bench } from '../views/bench/bench.tsx'
import { Centre } from '../views/centre.tsx'
import { HelpDialog } from '../views/help/help-dialog.tsx'
import { NewJob } from '../views/jobs/new-job.tsx'
import { Sill } from '../views/sill/sill.tsx'
import { Banner } from './banner.tsx'
import { commandsFor, findable } from './commands.ts'
import { FindAnything } from './find-anything.tsx'
import { JobsDialog } from './jobs-dialog.tsx'
import { KeySheet } from './key-sheet.tsx'
import { focusNextPane } from './next-pane.ts'
import { PrintHead } from './print-head.tsx'
import { SettingsDialog } from './settings-dialog.tsx'
import { TopBar } from './top-bar.tsx'
import { useDesktop } from './use-desktop.ts'
import { useRememberedTheme } from './use-remembered-theme.ts'
import { useShortcuts } from './use-shortcuts.ts'

// none has properties: each hears of what concerns it, and not of every edit with the frame around it
const [OwnCentre, OwnBench, OwnSill] = [memo(Centre), memo(Bench), memo(Sill)]

/** The window: top bar, drawing with the tape under it, bench at the right, sill at the bottom. */
export function App({ session }: { readonly session: Session }) {
  const [keysOpen, setKeysOpen] = useState(false)
  const [jobsOpen, setJobsOpen] = useState(false)
  const [newJobOpen, setNewJobOpen] = useState(false)
  const [settingsOpen, setSettingsOpen] = useState(false)
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
    if (refusedFile !== null) setJobsOpen(true)
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
        openKeys: () => setKeysOpen(true),
        openJobs: () => setJobsOpen(true),
        openNewJob: () => setNewJobOpen(true),
        openSettings: () => setSettingsOpen(true),
        nextPane: focusNextPane,
        setTheme: (theme) => session.remember({ theme }),
      },
      state,
    )
  }, [session, history, making, design, hidden])
  const all = useMemo(
    () => [...commands, ...(design ? findable(session, session.store.getState()) : [])],
    [commands, design, session],
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
      <FindAnything commands={all} />
      <HelpDialog />
      <SettingsDialog opened={settingsOpen} onClose={() => setSettingsOpen(false)} />
      <KeySheet commands={commands} opened={keysOpen} onClose={() => setKeysOpen(false)} />
      <JobsDialog
        opened={jobsOpen}
        onNew={() => {
          setJobsOpen(false)
          setNewJobOpen(true)
        }}
        onClose={() => {
          setJobsOpen(false)
          session.forgetRefusedFile()
        }}
      />
      <NewJob opened={newJobOpen} onClose={() => setNewJobOpen(false)} />
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
