import { Modal } from '@mantine/core'
import { type FormEvent, useEffect, useState } from 'react'
import { type JobStatement, statedValue } from '../../../core/job/index.ts'
import { Message } from '../../parts/message.tsx'
import { statedText } from '../../state/field-value.ts'
import {
  type AnswerFaults,
  type Answers,
  ASKED,
  answered,
  jobOfAnswers,
  UNANSWERED,
  UNNAMED,
} from '../../state/new-job.ts'
import { plural } from '../../state/print.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { PriceBookPart } from '../price/price-book.tsx'
import { AnswerField, answerId } from './answer-field.tsx'
import { TemplateChoice } from './template-choice.tsx'
import './new-job.css'
import { SiteFact } from './site-fact.tsx'

/** A new job in five questions, none of which must be answered. Closed without making it, it keeps what was typed. */
export function NewJob({ opened, onClose }: { readonly opened: boolean; onClose(): void }) {
  const session = useSession()
  const [answers, setAnswers] = useState<Answers>({})
  const [refused, setRefused] = useState<AnswerFaults>({})
  const [base, setBase] = useState(UNANSWERED)
  const template = useJob((state) => state.memory?.template ?? null)

  // biome-ignore lint/correctness/useExhaustiveDependencies: another template is another start
  useEffect(() => {
    if (opened) void session.startOfJobs().then(setBase)
  }, [opened, template, session])

  const fieldOf = (path: string) => ({
    path,
    answer: answers[path],
    ...startOf(base, path),
    fault: refused[path] ?? null,
    onAnswer(text: string) {
      const next = answered(answers, path, text)
      const read = jobOfAnswers(next, base)
      setAnswers(next)
      setRefused(read.ok ? {} : read.error)
    },
  })

  async function make(event: FormEvent) {
    event.preventDefault()
    const read = jobOfAnswers(answers, base)
    if (!read.ok) {
      setRefused(read.error)
      const [first] = Object.keys(read.error)
      if (first) document.getElementById(answerId(first))?.focus()
      return
    }
    await session.startJob(read.value)
    setAnswers({})
    onClose()
  }

  const wrong = Object.keys(refused).length
  return (
    <Modal
      opened={opened}
      onClose={onClose}
      title="New job: five questions"
      attributes={{ header: { role: 'none' } }}
      size="lg"
      overlayProps={{ backgroundOpacity: 0.4 }}
      closeButtonProps={{ 'aria-label': 'Close without making a job' }}
    >
      <form className="new-job" onSubmit={(event) => void make(event)} noValidate>
        <p className="soft">
          Answer what you know. What you leave stays at its default, shown dashed here and in the window, and
          can be changed at any time.
        </p>
        <AnswerField {...fieldOf('name')} instead={UNNAMED} />
        <TemplateChoice id="new-job-template" />
        <fieldset>
          <legend>1. How large is the deck?</legend>
          {ASKED.size.map((path) => (
            <AnswerField key={path} {...fieldOf(path)} />
          ))}
        </fieldset>
        <fieldset>
          <legend>2. Does the house hold it, and has it stairs and a guard?</legend>
          {ASKED.holding.map((path) => (
            <AnswerField key={path} {...fieldOf(path)} />
          ))}
        </fieldset>
        <fieldset>
          <legend>3. Who builds it?</legend>
          {ASKED.builder.map((path) => (
            <AnswerField key={path} {...fieldOf(path)} />
          ))}
        </fieldset>
        <fieldset>
          <legend>4. What is the place like?</legend>
          {ASKED.site.map((path) => (
            <SiteFact key={path} {...fieldOf(path)} />
          ))}
          <Message tone="near">
            Frost depth, soil and snow are local facts: ask the building department.
          </Message>
        </fieldset>
        <fieldset>
          <legend>5. Whose prices?</legend>
          <PriceBookPart isAsked />
        </fieldset>
        <div className="new-job-end">
          {wrong > 0 && <span role="status">{plural(wrong, 'answer')} to mend first</span>}
          <button type="button" className="button" onClick={onClose}>
            Not now
          </button>
          <button type="submit" className="button button-main">
            Make the deck
          </button>
        </div>
      </form>
    </Modal>
  )
}

/** What an unanswered field holds where the job that is started from states it. */
function startOf(base: JobStatement, path: string): { readonly instead?: string } {
  const value = statedValue(base, path)
  return value === undefined ? {} : { instead: statedText(value) }
}
