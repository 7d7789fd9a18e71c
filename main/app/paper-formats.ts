/** Files that papers are written as: pages, drawings for a CAD program, tables, the order as a message. */
export const PAPER_FORMATS = ['pdf', 'svg', 'dxf', 'csv', 'txt'] as const
export type PaperFormat = (typeof PAPER_FORMATS)[number]

/** Written where none is named. */
export const USUAL_FORMATS: readonly PaperFormat[] = ['pdf', 'dxf', 'csv', 'txt']
