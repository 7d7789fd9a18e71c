/** Why a store is not opened, and the way out. The file is left as it was. */
export interface StoreRefusal {
  readonly code: 'newer' | 'corrupt' | 'foreign' | 'unreachable'
  readonly message: string
}

/** Thrown where a save is made on a revision that is no longer the stored one. */
export class RevisionConflict extends Error {
  readonly stored: number
  constructor(name: string, stored: number) {
    super(
      `"${name}" was changed elsewhere: the stored revision is ${stored}. Open it again to see that change.`,
    )
    this.name = 'RevisionConflict'
    this.stored = stored
  }
}
