import { Modal } from '@mantine/core'
import { useState } from 'react'
import { LONGEST_PRICE_LIST } from '../../../core/price-list/index.ts'
import { ChooseFile } from '../../parts/choose-file.tsx'
import { type DecodedList, decodeList } from '../decode-list.ts'
import { PriceListImport } from './price-list-import.tsx'

/** A list of prices as a yard or a spreadsheet gives it: chosen here, and looked at in a dialog before it is taken. */
export function PriceListButton() {
  const [list, setList] = useState<DecodedList | null>(null)
  const [failure, setFailure] = useState<string | null>(null)

  async function choose(file: File) {
    if (file.size > LONGEST_PRICE_LIST * 3)
      return setFailure(`${file.name} is too large to be a list of prices.`)
    const read = decodeList(new Uint8Array(await file.arrayBuffer()))
    setFailure(read.ok ? null : `${file.name} ${read.error}.`)
    if (read.ok) setList(read.value)
  }

  return (
    <>
      <ChooseFile
        name="File of a list of prices"
        accept=".csv,.tsv,.txt,text/csv,text/plain,text/tab-separated-values"
        onChosen={(file) => void choose(file)}
      >
        Take prices from a list (CSV)
      </ChooseFile>
      {failure !== null && (
        <p className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {failure}
        </p>
      )}
      <Modal
        opened={list !== null}
        onClose={() => setList(null)}
        title="Prices from a list"
        attributes={{ header: { role: 'none' } }}
        size="xl"
        overlayProps={{ backgroundOpacity: 0.4 }}
        closeButtonProps={{ 'aria-label': 'Close the list of prices' }}
      >
        {list !== null && <PriceListImport list={list} onDone={() => setList(null)} />}
      </Modal>
    </>
  )
}
