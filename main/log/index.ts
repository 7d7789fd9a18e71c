export { createLog, type Log } from './log.ts'
export { redact } from './redact.ts'
