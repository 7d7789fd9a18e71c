export { fileNameFor, jobName } from '../../core/job/index.ts'
