/** Thousands parted by commas. */
export function grouped(n: number): string {
  return `${n}`.replace(/\B(?=(?:\d{3})+$)/g, ',')
}
