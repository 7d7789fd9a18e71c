import { Modal } from '@mantine/core'
import { useState } from 'react'
import { FIELDS } from '../../../core/job/index.ts'
import { isRelevant } from '../../state/relevant-fields.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { About } from './about.tsx'
import { findHelp } from './find-help.ts'
import { ABOUT, TOPICS, type Topic } from './help-topics.ts'
import './help.css'

/** The help: found by words, read without a network. */
export function HelpDialog() {
  const session = useSession()
  const topic = useJob((state) => state.help.topic)
  return (
    <Modal
      opened={topic !== null}
      onClose={() => session.readHelp(null)}
      title="Help"
      attributes={{ header: { role: 'none' } }}
      size="lg"
      overlayProps={{ backgroundOpacity: 0.4 }}
      closeButtonProps={{ 'aria-label': 'Close the help' }}
    >
      <Help topic={TOPICS.find(({ id }) => id === topic) ?? null} />
    </Modal>
  )
}

function Help({ topic }: { readonly topic: Topic | null }) {
  const session = useSession()
  const job = useJob((state) => state.design?.job ?? null)
  const [question, setQuestion] = useState('')
  if (topic !== null)
    return (
      <article className="help">
        <button type="button" className="link" onClick={() => session.readHelp('')}>
          All topics
        </button>
        <h3>{topic.title}</h3>
        {topic.paragraphs.map((paragraph) => (
          <p key={paragraph}>{paragraph}</p>
        ))}
        {topic.id === ABOUT && <About />}
        {topic.place !== undefined && (
          <button
            type="button"
            className="button"
            onClick={() => {
              session.readHelp(null)
              if (topic.place) session.go(topic.place)
            }}
          >
            Go there
          </button>
        )}
      </article>
    )
  const found = findHelp(
    question,
    TOPICS,
    FIELDS.filter(({ path }) => job === null || isRelevant(path, job)),
  )
  const none = found.topics.length === 0 && found.fields.length === 0
  return (
    <div className="help">
      <label className="help-find entries">
        Find in the help
        <input
          type="search"
          data-autofocus
          value={question}
          maxLength={100}
          onChange={(event) => setQuestion(event.target.value)}
        />
      </label>
      <p className="unseen" role="status">
        {question.trim() !== '' && `${found.topics.length} topics, ${found.fields.length} fields`}
      </p>
      {none && <p className="soft">Nothing in the help speaks of “{question}”. Try one word of it.</p>}
      <ul aria-label="Topics">
        {found.topics.map(({ id, title }) => (
          <li key={id}>
            <button type="button" className="link" onClick={() => session.readHelp(id)}>
              {title}
            </button>
          </li>
        ))}
      </ul>
      {found.fields.length > 0 && (
        <>
          <h3>Fields</h3>
          <dl aria-label="Fields">
            {found.fields.map(({ path, label, help, basis }) => (
              <div key={path}>
                <dt>
                  <button
                    type="button"
                    className="link"
                    onClick={() => {
                      session.readHelp(null)
                      session.seek(path)
                    }}
                  >
                    {label}
                  </button>
                </dt>
                <dd>
                  {help} <span className="soft">Default: {basis}.</span>
                </dd>
              </div>
            ))}
          </dl>
        </>
      )}
    </div>
  )
}
