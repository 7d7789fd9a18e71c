/** Every way to change one number by one, one name, or to leave out or repeat one entry. */
export function* changes(value: unknown, path = ''): Iterable<readonly [path: string, changed: unknown]> {
  if (typeof value === 'number') {
    yield [`${path} + 1`, value + 1]
    yield [`${path} - 1`, value - 1]
  } else if (typeof value === 'string') yield [path, `${value}x`]
  else if (Array.isArray(value)) {
    for (const [index, entry] of value.entries()) {
      for (const [at, other] of changes(entry, `${path}[${index}]`)) yield [at, value.with(index, other)]
      yield [`${path} without ${index}`, value.toSpliced(index, 1)]
      yield [`${path} with ${index} twice`, [...value, entry]]
    }
  } else if (value !== null && typeof value === 'object') {
    for (const [key, entry] of Object.entries(value))
      for (const [at, other] of changes(entry, `${path}.${key}`)) yield [at, { ...value, [key]: other }]
  }
}
