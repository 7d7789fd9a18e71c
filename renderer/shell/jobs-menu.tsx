import { Menu } from '@mantine/core'
import { ChevronDown } from 'lucide-react'
import { DEMO_JOB } from '../../core/job/index.ts'
import { printClock } from '../state/print.ts'
import { useJob, useSession } from '../state/session-context.ts'

/** So many jobs stand in the menu, those saved last; the others are among all jobs. */
const MOST = 12

/** The open job's name, and behind it the others. */
export function JobsMenu({ name, onNew, onAll }: { readonly name: string; onNew(): void; onAll(): void }) {
  const session = useSession()
  const jobs = useJob((state) => state.jobs)
  const open = useJob((state) => state.open?.id)
  return (
    <Menu
      position="bottom-start"
      width={300}
      withinPortal={false}
      withInitialFocusPlaceholder={false}
      onOpen={() => void session.listJobs()}
    >
      <Menu.Target>
        <button type="button" className="job-name" aria-label={`Job ${name}: other jobs`}>
          <span>{name}</span>
          <ChevronDown size={15} aria-hidden="true" />
        </button>
      </Menu.Target>
      <Menu.Dropdown>
        <Menu.Item onClick={onNew}>New job</Menu.Item>
        <Menu.Item onClick={() => void session.createJob(DEMO_JOB)}>New job from the demonstration</Menu.Item>
        <Menu.Item onClick={onAll}>All jobs, earlier states, everything as a file…</Menu.Item>
        <Menu.Divider role="separator" />
        <Menu.Label role="presentation">Jobs saved last</Menu.Label>
        <div className="jobs-list" role="group" aria-label="Jobs">
          {jobs === null && <Menu.Label role="presentation">Reading the list</Menu.Label>}
          {jobs?.slice(0, MOST).map((job) => (
            <Menu.Item
              key={job.id}
              onClick={() => void session.openJob(job.id)}
              disabled={job.id === open}
              rightSection={
                <span className="soft">
                  {job.id === open ? 'open' : `${job.savedAt.slice(0, 10)} ${printClock(job.savedAt)}`}
                </span>
              }
            >
              {job.name}
            </Menu.Item>
          ))}
        </div>
      </Menu.Dropdown>
    </Menu>
  )
}
