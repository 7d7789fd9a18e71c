import { useDeferredValue, useId, useMemo, useState } from 'react'
import {
  LONGEST_LIST,
  MEANINGS,
  type Meaning,
  type RowFault,
  readCutList,
  type Source,
} from '../../../core/cut-list/index.ts'
import { ChooseFile } from '../../parts/choose-file.tsx'
import { ColumnsPreview } from '../columns-preview.tsx'
import { ListFaults } from '../list-faults.tsx'
import { readFileText, type TextWanted } from '../read-file-text.ts'
import { previewOf } from './preview.ts'

const WANTED: TextWanted = {
  what: 'a cut list',
  longest: LONGEST_LIST,
  make: 'Save it from the spreadsheet as CSV (UTF-8), or paste the cells.',
}

/** A list as text, pasted or from a file: its first rows with what each column holds, and what is wrong with it. */
export function ListSource({
  source,
  label,
  hint,
  text,
  columns,
  faults,
  onText,
  onColumns,
}: {
  readonly source: Source
  readonly label: string
  readonly hint: string
  readonly text: string
  readonly columns: readonly Meaning[] | null
  /** found where list and stock are read together */
  readonly faults: readonly RowFault[]
  onText(text: string): void
  onColumns(columns: readonly Meaning[] | null): void
}) {
  const id = useId()
  const [failure, setFailure] = useState<string | null>(null)
  const settled = useDeferredValue(text)
  const own = useMemo(() => {
    if (settled.trim() === '') return []
    const read = readCutList(settled, { source, ...(columns === null ? {} : { columns }) })
    return read.ok ? [] : read.error
  }, [settled, source, columns])
  const all = own.length > 0 ? own : faults

  async function take(chosen: File) {
    const read = await readFileText(chosen, WANTED)
    setFailure(read.ok ? null : read.error)
    if (read.ok) {
      onColumns(null)
      onText(read.value)
    }
  }

  return (
    <section className="list-source entries" aria-label={label}>
      <div className="list-head">
        <label htmlFor={id}>{label}</label>
        <ChooseFile
          name={`File of: ${label}`}
          accept=".csv,.tsv,.txt,text/csv,text/plain,text/tab-separated-values"
          onChosen={(file) => void take(file)}
        >
          Choose a file
        </ChooseFile>
      </div>
      <textarea
        id={id}
        rows={7}
        value={text}
        placeholder={hint}
        spellCheck={false}
        aria-invalid={all.length > 0}
        aria-describedby={all.length > 0 ? `${id}-faults` : undefined}
        onChange={(event) => onText(event.target.value)}
        onDragOver={(event) => event.preventDefault()}
        onDrop={(event) => {
          const [dropped] = event.dataTransfer.files
          if (!dropped) return
          event.preventDefault()
          void take(dropped)
        }}
      />
      {failure !== null && (
        <p className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {failure}
        </p>
      )}
      {all.length > 0 && <ListFaults id={`${id}-faults`} faults={all} />}
      <Preview text={settled} columns={columns} faults={all} onColumns={onColumns} />
    </section>
  )
}

function Preview({
  text,
  columns,
  faults,
  onColumns,
}: {
  readonly text: string
  readonly columns: readonly Meaning[] | null
  readonly faults: readonly RowFault[]
  onColumns(columns: readonly Meaning[] | null): void
}) {
  const preview = useMemo(() => previewOf(text), [text])
  if (preview === null) return null
  const { rows, found, more } = preview
  const meanings = found.map((meaning, index) => columns?.[index] ?? (columns === null ? meaning : 'nothing'))
  return (
    <ColumnsPreview
      rows={rows}
      columns={meanings}
      meanings={MEANINGS}
      caption={
        preview.blocks
          ? 'Pieces and stock have headings of their own.'
          : 'What each column holds; change it where it was taken wrongly.'
      }
      told={preview.blocks ? null : columns !== null}
      more={more}
      wrong={new Set(faults.map(({ row, column }) => `${row}:${column}`))}
      onColumns={onColumns}
    />
  )
}
