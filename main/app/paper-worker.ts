import { parentPort, workerData } from 'node:worker_threads'
import { makePdf } from '../exports/pdf/index.ts'
import type { PdfMaker } from './papers.ts'

// writes one PDF and ends, so that what it took is given back
const [pages, about] = workerData as Parameters<PdfMaker>
const bytes = await makePdf(pages, about)
parentPort?.postMessage(bytes, [bytes.buffer as ArrayBuffer])
