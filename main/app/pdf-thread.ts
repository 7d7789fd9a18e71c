import { Worker } from 'node:worker_threads'
import type { PdfMaker } from './papers.ts'

/** A set of pages takes some tens of megabytes; the young heap is kept small, for it would only be held emptied. */
const HEAP = { maxYoungGenerationSizeMb: 16, maxOldGenerationSizeMb: 512 }

/** PDFs on threads of their own, off the one that serves the window; each ends with its paper. */
export function pdfThread(file: string): PdfMaker {
  return (pages, about) =>
    new Promise((resolve, reject) => {
      const worker = new Worker(file, { workerData: [pages, about], resourceLimits: HEAP })
      worker.on('message', resolve)
      worker.on('error', reject)
      worker.on('exit', () => reject(new Error('The PDF could not be made: its thread ended.')))
    })
}
