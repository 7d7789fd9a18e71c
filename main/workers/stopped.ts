/** A request that a newer one took the place of, or that ended with the program. */
export class Stopped extends Error {
  constructor(message = 'Stopped: a newer request took its place.') {
    super(message)
    this.name = 'Stopped'
  }
}
