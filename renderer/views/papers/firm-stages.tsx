import { useState } from 'react'
import type { Firm } from '../../../core/papers/index.ts'
import { parseShare, printShare, share } from '../../../core/units/index.ts'

interface Row {
  readonly label: string
  readonly share: string
}

const MOST = 12
const WHOLE = 10_000

/** Stages of payment of the firm's quotes, shares of the price; kept once they come to the whole. */
export function FirmStages({
  stages,
  onKeep,
}: {
  readonly stages: Firm['stages']
  readonly onKeep: (stages: Firm['stages']) => void
}) {
  const [rows, setRows] = useState<readonly Row[]>(
    stages.map((stage) => ({ label: stage.label, share: printShare(share(stage.share)) })),
  )
  const [fault, setFault] = useState<string | null>(null)
  const settle = (now: readonly Row[]): void => {
    setRows(now)
    const read = readRows(now)
    setFault(typeof read === 'string' ? read : null)
    if (typeof read !== 'string') onKeep(read)
  }
  const change = (at: number, patch: Partial<Row>): void =>
    setRows(rows.map((row, i) => (i === at ? { ...row, ...patch } : row)))
  return (
    <fieldset className="paper-choice" aria-label="Stages of payment">
      <legend>Stages of payment</legend>
      {rows.map((row, at) => (
        <div key={at} className="firm-stage">
          <input
            type="text"
            aria-label={`Stage ${at + 1}: when it is due`}
            maxLength={500}
            value={row.label}
            onChange={({ target }) => change(at, { label: target.value })}
            onBlur={() => settle(rows)}
          />
          <input
            type="text"
            aria-label={`Stage ${at + 1}: share of the price`}
            value={row.share}
            aria-invalid={fault !== null}
            onChange={({ target }) => change(at, { share: target.value })}
            onBlur={() => settle(rows)}
          />
          <button
            type="button"
            className="link"
            aria-label={`Stage ${at + 1}: take it out`}
            onClick={() => settle(rows.filter((_, i) => i !== at))}
          >
            out
          </button>
        </div>
      ))}
      {fault !== null && (
        <p className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {fault}
        </p>
      )}
      {rows.length < MOST && (
        <button type="button" className="button" onClick={() => setRows([...rows, { label: '', share: '' }])}>
          One more stage
        </button>
      )}
    </fieldset>
  )
}

function readRows(rows: readonly Row[]): Firm['stages'] | string {
  const stages: { label: string; share: number }[] = []
  for (const { label, share: text } of rows) {
    const read = parseShare(text)
    if (!read.ok) return `“${text}” is no share: ${read.error.fix}.`
    if (label.trim() === '') return 'A stage says when it is due, such as Deposit.'
    stages.push({ label: label.trim(), share: read.value })
  }
  const sum = stages.reduce((all, stage) => all + stage.share, 0)
  if (stages.length === 0 || sum === WHOLE) return stages
  const off = printShare(share(Math.abs(WHOLE - sum)))
  return `The stages come to ${printShare(share(sum))}: ${off} ${sum < WHOLE ? 'are missing' : 'are too much'}. They are kept once they come to 100 %.`
}
