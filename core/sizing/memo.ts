/** A function that makes each output once, by a key of its input. */
export function memo<Input, Output>(keyOf: (input: Input) => string, make: (input: Input) => Output) {
  const made = new Map<string, { readonly value: Output }>()
  return (input: Input): Output => {
    const key = keyOf(input)
    const found = made.get(key) ?? { value: make(input) }
    made.set(key, found)
    return found.value
  }
}
