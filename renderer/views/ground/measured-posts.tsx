import { useState } from 'react'
import type { Design } from '../../../core/estimate-types.ts'
import type { GroundReport } from '../../../core/ground/index.ts'
import { postList } from '../../../core/job/index.ts'
import { postBoardsTable } from '../../../core/papers/index.ts'
import { parseLength, printLength, type Ticks, ticks } from '../../../core/units/index.ts'
import { Message } from '../../parts/message.tsx'
import { PlainTable } from '../../parts/plain-table.tsx'
import { useSession } from '../../state/session-context.ts'
import { GroundTable } from './ground-table.tsx'
import '../../parts/field.css'

const FIELD = 'ground.measured'

/** Posts are measured on their finished piers: lengths typed back, and whether the posts that were ordered still do. */
export function MeasuredPosts({
  design,
  measured,
}: {
  readonly design: Design
  readonly measured: GroundReport['measured']
}) {
  const session = useSession()
  const stated = postList(design.job.ground.measured)

  function state(post: number, length: Ticks | null) {
    const others = stated.filter((one) => one.post !== post)
    const list = length === null ? others : [...others, { post, length }]
    const text = [...list]
      .sort((a, b) => a.post - b.post)
      .map((one) => `${one.post}: ${printLength(one.length)}`)
      .join('; ')
    session.state(FIELD, text === '' ? undefined : text, `post ${post} as measured`)
  }

  return (
    <section aria-labelledby="measured-title">
      <h2 id="measured-title">Posts measured on their piers</h2>
      <p className="soft">
        From the post base to the underside of the beam, once the concrete is hard. No post is cut before.
      </p>
      <PlainTable titled="measured-title" headings={['Post', 'Drawn', 'Measured', 'Longer']}>
        {design.frame.posts.map(({ number, length }) => {
          const own = stated.find(({ post }) => post === number)?.length ?? null
          return (
            <tr key={number}>
              <th scope="row">{number}</th>
              <td>{printLength(length)}</td>
              <td className="entry-form">
                <Measure
                  key={own ?? 'none'}
                  post={number}
                  length={own}
                  onLength={(read) => state(number, read)}
                />
              </td>
              <td>{own === null ? '' : printLength(ticks(own - length))}</td>
            </tr>
          )
        })}
      </PlainTable>
      {measured !== null && stated.length > 0 && (
        <div role="status">
          <Message tone={measured.enough ? 'plain' : 'fails'}>{measured.message}</Message>
        </div>
      )}
      {measured !== null && stated.length > 0 && <GroundTable table={postBoardsTable(measured)} />}
    </section>
  )
}

function Measure({
  post,
  length,
  onLength,
}: {
  readonly post: number
  readonly length: Ticks | null
  onLength(length: Ticks | null): void
}) {
  const kept = length === null ? '' : printLength(length)
  const [text, setText] = useState(kept)
  const [fault, setFault] = useState<string | null>(null)

  function commit() {
    if (text.trim() === kept) return setFault(null)
    if (text.trim() === '') {
      setFault(null)
      return onLength(null)
    }
    const read = parseLength(text)
    if (!read.ok) return setFault(`${read.error.message}; ${read.error.fix}.`)
    if (read.value <= 0) return setFault('A post is longer than nothing; write a length such as 1 ft 8 in.')
    setFault(null)
    if (read.value !== length) onLength(read.value)
  }

  return (
    <>
      <input
        className="measured-entry"
        aria-label={`Post ${post} as measured`}
        value={text}
        autoComplete="off"
        spellCheck={false}
        aria-invalid={fault !== null}
        aria-describedby={fault === null ? undefined : `measured-${post}-fault`}
        onChange={(event) => setText(event.target.value)}
        onBlur={commit}
        onKeyDown={(event) => {
          if (event.key === 'Enter') commit()
        }}
      />
      {fault !== null && (
        <p id={`measured-${post}-fault`} className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {fault}
        </p>
      )}
    </>
  )
}
