export { SAMPLE_BOOK } from './sample-book.ts'
export type * from './types.ts'
