/** The latest few answers by key; the one unused longest goes first. */
export class Recent<T> {
  readonly #kept = new Map<string, T>()
  readonly #most: number

  constructor(most: number) {
    this.#most = most
  }

  get(key: string): T | undefined {
    const value = this.#kept.get(key)
    if (value !== undefined) {
      this.#kept.delete(key)
      this.#kept.set(key, value)
    }
    return value
  }

  set(key: string, value: T): void {
    this.#kept.delete(key)
    this.#kept.set(key, value)
    const [oldest] = this.#kept.keys()
    if (this.#kept.size > this.#most && oldest !== undefined) this.#kept.delete(oldest)
  }
}
