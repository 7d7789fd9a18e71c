/** Files that papers are written as. */
export const PAPER_FORMATS = ['pdf', 'svg'] as const
export type PaperFormat = (typeof PAPER_FORMATS)[number]
