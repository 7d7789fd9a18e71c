import type { JobStatement } from '../../core/job/index.ts'
import type { DesignAnswer } from '../workers/design-answer.ts'

/** Makes designs of statements somewhere else than in the window's own thread. */
export interface Designer {
  design(edit: number, statement: JobStatement): void
  dispose(): void
}

export type StartDesigner = (
  onAnswer: (answer: DesignAnswer) => void,
  onFailure: (message: string) => void,
) => Designer
