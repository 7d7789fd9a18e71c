import type { FieldPath, Job, StairSpec } from './types.ts'

/** Where a job states its stairs: the first at the branch itself, further ones below it. */
export const STAIR_BRANCHES = [
  { branch: 'stairs', name: 'Stairs' },
  { branch: 'stairs.second', name: 'Second stairs' },
  { branch: 'stairs.third', name: 'Third stairs' },
] as const

export type StairBranch = (typeof STAIR_BRANCHES)[number]['branch']

/** One of the stairs that a job asks for. */
export interface StatedStairs {
  /** from 1, in the order of the branches, whether those before are asked for or not */
  readonly number: number
  readonly branch: StairBranch
  readonly spec: StairSpec
}

/** What a job says of some stairs. */
export function specAt({ stairs }: Pick<Job, 'stairs'>, branch: StairBranch): StairSpec {
  return { stairs, 'stairs.second': stairs.second, 'stairs.third': stairs.third }[branch]
}

/** The stairs that a job asks for, in their order. */
export function stairsOf(job: Pick<Job, 'stairs'>): readonly StatedStairs[] {
  return STAIR_BRANCHES.map(({ branch }, i) => ({ number: i + 1, branch, spec: specAt(job, branch) })).filter(
    ({ spec }) => spec.kind !== 'none',
  )
}

/** The job as one of its stairs sees it: what it says of stairs is said of these. */
export function jobOfStairs(job: Job, branch: StairBranch): Job {
  return { ...job, stairs: { ...job.stairs, ...specAt(job, branch) } }
}

/** The field of some stairs that says what this one says of the first; any other field as it is. */
export function furtherStairs(branch: StairBranch, path: FieldPath): FieldPath {
  return path.startsWith('stairs.') ? `${branch}${path.slice('stairs'.length)}` : path
}

/** Whether a field says of the second or third stairs what another says of the first. */
export function isOfFurtherStairs(path: FieldPath): boolean {
  return path.startsWith('stairs.second.') || path.startsWith('stairs.third.')
}

/** How some stairs are told from others: the title that stands for the first alone, with which they are for further ones. */
export function titleOfStairs(branch: StairBranch, title: string): string {
  const name = STAIR_BRANCHES.find((one) => one.branch === branch)?.name ?? ''
  return branch === 'stairs' ? title : `${title} (${name.toLowerCase()})`
}
