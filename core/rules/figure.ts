/** A number as it is printed in steps: thousands parted by commas, so many decimals at most, no trailing zeros. */
export function figure(value: number, decimals = 0): string {
  const [whole = '0', rest = ''] = value.toFixed(decimals).split('.')
  const trimmed = rest.replace(/0+$/, '')
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',')
  return trimmed === '' ? grouped : `${grouped}.${trimmed}`
}
