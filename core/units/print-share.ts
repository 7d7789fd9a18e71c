import type { Share } from './money.ts'

/** A share in percent without idle zeros: `32 %`, `8.25 %`. */
export function printShare(part: Share): string {
  const size = Math.abs(part)
  const places = `${size % 100}`.padStart(2, '0').replace(/0+$/, '')
  return `${part < 0 ? '-' : ''}${Math.floor(size / 100)}${places === '' ? '' : `.${places}`} %`
}
