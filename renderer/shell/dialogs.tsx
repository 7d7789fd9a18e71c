import { memo } from 'react'
import { useSession } from '../state/session-context.ts'
import { HelpDialog } from '../views/help/help-dialog.tsx'
import { NewJob } from '../views/jobs/new-job.tsx'
import type { Command } from './commands.ts'
import { JobsDialog } from './jobs-dialog.tsx'
import { KeySheet } from './key-sheet.tsx'
import { SettingsDialog } from './settings-dialog.tsx'

/** What can stand over the window; one at a time. */
export type DialogName = 'keys' | 'jobs' | 'new job' | 'settings'

/** Everything that opens over the window. An edit does not concern them: they hear of what they show themselves. */
export const Dialogs = memo(function Dialogs({
  open,
  commands,
  show,
}: {
  readonly open: DialogName | null
  /** for the sheet of shortcuts; of no account while that is closed */
  readonly commands: readonly Command[]
  show(dialog: DialogName | null): void
}) {
  const session = useSession()
  const close = () => show(null)
  return (
    <>
      <HelpDialog />
      <SettingsDialog opened={open === 'settings'} onClose={close} />
      <KeySheet commands={commands} opened={open === 'keys'} onClose={close} />
      <JobsDialog
        opened={open === 'jobs'}
        onNew={() => show('new job')}
        onClose={() => {
          close()
          session.forgetRefusedFile()
        }}
      />
      <NewJob opened={open === 'new job'} onClose={close} />
    </>
  )
})
