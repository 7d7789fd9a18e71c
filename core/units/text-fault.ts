/** What is wrong with a typed quantity, and what would be right. */
export interface TextFault {
  readonly message: string
  readonly fix: string
  /** place in the text where it goes wrong, as an index of its UTF-16 units */
  readonly at?: number
}
