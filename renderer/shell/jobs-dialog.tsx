import { Modal } from '@mantine/core'
import { memo, useCallback, useEffect, useState } from 'react'
import { DEMO_JOB } from '../../core/job/index.ts'
import type { JobSummary, JobVersionSummary } from '../../shared/contract/index.ts'
import { ChooseFile } from '../parts/choose-file.tsx'
import { OrderChoice } from '../parts/order-choice.tsx'
import { sortedBy } from '../parts/sorting.ts'
import { printClock } from '../state/print.ts'
import { useJob, useSession } from '../state/session-context.ts'
import { FileFaults } from '../views/file-faults.tsx'
import { readFileText } from '../views/read-file-text.ts'
import { saveText } from '../views/save-blob.ts'
import { JOB_FILES, saveJobFile, takeJobFile } from './job-files.ts'
import './jobs-dialog.css'

const LONGEST = 50_000_000

const ORDERS = [
  ['saved', 'saved last, first'],
  ['oldest', 'saved longest ago, first'],
  ['name', 'by name'],
] as const

/** Every job: found by name, opened, copied, taken off the list and brought back; earlier states; all as one file. */
export function JobsDialog({
  opened,
  onNew,
  onClose,
}: {
  readonly opened: boolean
  onNew(): void
  onClose(): void
}) {
  return (
    <Modal
      opened={opened}
      onClose={onClose}
      title="Jobs"
      attributes={{ header: { role: 'none' } }}
      size="lg"
      overlayProps={{ backgroundOpacity: 0.4 }}
      closeButtonProps={{ 'aria-label': 'Close the jobs' }}
    >
      <Jobs onNew={onNew} onClose={onClose} />
    </Modal>
  )
}

function Jobs({ onNew, onClose }: { onNew(): void; onClose(): void }) {
  const session = useSession()
  const jobs = useJob((state) => state.jobs)
  const open = useJob((state) => state.open?.id)
  const [sought, setSought] = useState('')
  const [order, setOrder] = useState<(typeof ORDERS)[number][0]>('saved')
  const [removed, setRemoved] = useState<readonly JobSummary[]>([])
  const readRemoved = useCallback(async () => setRemoved((await session.removedJobs()) ?? []), [session])

  // biome-ignore lint/correctness/useExhaustiveDependencies: read once, when the dialog opens
  useEffect(() => {
    void session.listJobs()
    void readRemoved()
  }, [])

  const wanted = sought.trim().toLocaleLowerCase()
  const named = (jobs ?? []).filter((job) => job.name.toLocaleLowerCase().includes(wanted))
  const found =
    order === 'name'
      ? sortedBy(named, ({ name }) => name, false)
      : order === 'saved'
        ? named
        : named.toReversed()
  const take = (deed: Promise<void>) => void deed.then(readRemoved)
  return (
    <div className="jobs-dialog">
      <div className="jobs-tools">
        <label className="jobs-find entries">
          Find a job
          <input value={sought} maxLength={100} onChange={(event) => setSought(event.target.value)} />
        </label>
        <button type="button" className="button" onClick={onNew}>
          New job
        </button>
        <button
          type="button"
          className="button"
          onClick={() => void session.createJob(DEMO_JOB).then(onClose)}
        >
          New from the demonstration
        </button>
      </div>
      {found.length > 1 && <OrderChoice of="Jobs" orders={ORDERS} order={order} onOrder={setOrder} />}
      {jobs !== null && found.length === 0 && (
        <p className="soft">
          {wanted === ''
            ? 'No job yet: “New job” asks five questions, “New from the demonstration” makes one to try things on.'
            : `No job’s name holds “${sought}”.`}
        </p>
      )}
      <ul className="jobs-rows" aria-label="Jobs">
        {found.map((job) => (
          <JobRow key={job.id} job={job} isOpen={job.id === open} onClose={onClose} onTaken={readRemoved} />
        ))}
      </ul>
      {removed.length > 0 && (
        <details>
          <summary>Off the list ({removed.length})</summary>
          <ul className="jobs-rows" aria-label="Jobs off the list">
            {removed.map((job) => (
              <li key={job.id}>
                <span className="jobs-name">{job.name}</span>
                <button
                  type="button"
                  className="button"
                  aria-label={`Bring back ${job.name}`}
                  onClick={() => take(session.bringBackJob(job))}
                >
                  Bring back
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
      <EarlierStates onClose={onClose} />
      <OneJobAsFile onClose={onClose} />
      <AsOneFile />
    </div>
  )
}

const JobRow = memo(function JobRow({
  job,
  isOpen,
  onClose,
  onTaken,
}: {
  readonly job: JobSummary
  readonly isOpen: boolean
  onClose(): void
  onTaken(): Promise<void>
}) {
  const session = useSession()
  return (
    <li>
      <button
        type="button"
        className="jobs-open"
        disabled={isOpen}
        onClick={() => void session.openJob(job.id).then(onClose)}
      >
        <span className="jobs-name">{job.name}</span>
        <span className="soft">{isOpen ? 'open' : when(job.savedAt)}</span>
      </button>
      <button
        type="button"
        className="button"
        aria-label={`Copy ${job.name}`}
        onClick={() => void session.duplicateJob(job.id).then(onClose)}
      >
        Copy
      </button>
      <button
        type="button"
        className="button"
        aria-label={`Take off the list: ${job.name}`}
        onClick={() => void session.removeJob(job).then(onTaken)}
      >
        Take off
      </button>
    </li>
  )
})

function EarlierStates({ onClose }: { onClose(): void }) {
  const session = useSession()
  const [states, setStates] = useState<readonly JobVersionSummary[] | null>(null)
  return (
    <details
      onToggle={(event) => {
        if (event.currentTarget.open) void session.earlierStates().then(setStates)
      }}
    >
      <summary>Earlier states of the open job</summary>
      {states === null ? (
        <p className="soft">Reading them.</p>
      ) : (
        <ul className="jobs-rows" aria-label="Earlier states">
          {states.map((state, n) => (
            <li key={state.revision}>
              <span className="jobs-name">{state.label}</span>
              <span className="soft">{when(state.savedAt)}</span>
              {n === 0 ? (
                <span className="soft">now</span>
              ) : (
                <button
                  type="button"
                  className="button"
                  aria-label={`Go back to ${state.label}, ${when(state.savedAt)}`}
                  onClick={() => void session.goBackTo(state).then(onClose)}
                >
                  Go back to it
                </button>
              )}
            </li>
          ))}
        </ul>
      )}
    </details>
  )
}

function OneJobAsFile({ onClose }: { onClose(): void }) {
  const session = useSession()
  const refused = useJob((state) => state.refusedFile)

  async function take(chosen: File) {
    await takeJobFile(session, chosen)
    if (session.store.getState().refusedFile === null) onClose()
  }

  return (
    <section className="jobs-file" aria-label="One job as a file">
      <button type="button" className="button" onClick={() => saveJobFile(session)}>
        Save this job as a file
      </button>
      <ChooseFile name="Job file" accept={JOB_FILES} onChosen={(file) => void take(file)}>
        Open a job file
      </ChooseFile>
      <p className="soft">Plain text that the command line reads too. It is opened as a job of its own.</p>
      {refused !== null && (
        <FileFaults lead={`${refused.name} was not taken; nothing was changed.`} faults={refused.faults} />
      )}
    </section>
  )
}

function AsOneFile() {
  const session = useSession()
  const [fault, setFault] = useState<string | null>(null)

  async function save() {
    const made = await session.everything()
    if (made) saveText(made.fileName, made.text, 'application/json')
  }

  async function take(chosen: File) {
    const read = await readFileText(chosen, {
      what: 'a file of everything',
      longest: LONGEST,
      make: 'Choose one that this program made.',
    })
    setFault(read.ok ? await session.takeEverything(read.value) : read.error)
  }

  return (
    <section className="jobs-file" aria-label="Everything as one file">
      <button type="button" className="button" onClick={() => void save()}>
        Save everything as one file
      </button>
      <ChooseFile
        name="File of everything"
        accept=".json,application/json"
        onChosen={(file) => void take(file)}
      >
        Take in such a file
      </ChooseFile>
      <p className="soft">
        Every job with its sent quotes and the marks at the saw, the rack, your firm and your own prices. What
        is here is never overwritten.
      </p>
      {fault !== null && (
        <p className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {fault}
        </p>
      )}
    </section>
  )
}

function when(time: string): string {
  return `${time.slice(0, 10)} ${printClock(time)}`
}
