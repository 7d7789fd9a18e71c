/** The papers with their PDFs written on the thread that asks, for a door that waits for one answer and ends. */
export { makePdf } from '../exports/pdf/index.ts'
export { makePapers } from './papers.ts'
