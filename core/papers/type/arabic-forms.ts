/** Where the forms in which Arabic letters are joined stand: The Unicode Standard, Arabic Presentation Forms-B and -A. */
const BLOCKS = [
  [0xfe80, 0xfefc],
  [0xfb50, 0xfbb1],
  [0xfbd3, 0xfbe9],
  [0xfbfc, 0xfbff],
] as const

const LAM = '\u0644'
/** Stretches a join: it holds on to the letter on either side. */
const TATWEEL = '\u0640'

/** Forms of a letter, or of lam with alef, as the charts order them: alone, last, first, in the middle. */
const FORMS: ReadonlyMap<string, readonly string[]> = formsByLetter()

function formsByLetter(): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>()
  for (const [first, last] of BLOCKS) {
    for (let code = first; code <= last; code += 1) {
      const form = String.fromCharCode(code)
      const letter = form.normalize('NFKC')
      if (letter !== form) found.set(letter, [...(found.get(letter) ?? []), form])
    }
  }
  return found
}

/** A text with its Arabic letters in the forms in which they are joined, still in the order of reading. */
export function joinedArabic(text: string): string {
  if (!/[\u0620-\u06ff]/.test(text)) return text
  const units = unitsOf(text)
  const letters = units.filter((unit) => !/^\p{M}$/u.test(unit))
  let at = -1
  return units
    .map((unit) => {
      if (/^\p{M}$/u.test(unit)) return unit
      at += 1
      const forms = FORMS.get(unit)
      if (forms === undefined) return unit
      const joinsBack = holdsNext(letters[at - 1]) && forms.length > 1
      const joinsOn = holdsNext(unit) && holdsPrevious(letters[at + 1])
      return forms[joinsBack ? (joinsOn ? 3 : 1) : joinsOn ? 2 : 0] ?? unit
    })
    .join('')
}

/** Letters one by one, lam with an alef after it as one. */
function unitsOf(text: string): readonly string[] {
  const units: string[] = []
  for (const letter of text) {
    const last = units.at(-1)
    if (last === LAM && FORMS.has(last + letter)) units[units.length - 1] = last + letter
    else units.push(letter)
  }
  return units
}

function holdsNext(unit: string | undefined): boolean {
  return unit === TATWEEL || (unit !== undefined && FORMS.get(unit)?.length === 4)
}

function holdsPrevious(unit: string | undefined): boolean {
  return unit === TATWEEL || (unit !== undefined && (FORMS.get(unit)?.length ?? 0) > 1)
}
