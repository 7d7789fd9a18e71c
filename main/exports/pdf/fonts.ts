import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import type { Face } from '../../../core/papers/index.ts'
import { unwrapWoff } from './unwrap-woff.ts'

const packages = createRequire(import.meta.url)
const folderOf = (name: string): string => dirname(packages.resolve(`${name}/package.json`))

type ByWeight = { readonly regular: string | Buffer; readonly bold: string | Buffer }

/** The printed font of a face by its weights, found beside the program like any package of it. */
export function fontOf(face: Face): ByWeight {
  switch (face) {
    case 'own':
      return expo('atkinson-hyperlegible-next', 'AtkinsonHyperlegibleNext')
    case 'other':
      return expo('noto-sans', 'NotoSans')
    case 'hebrew':
      return expo('noto-sans-hebrew', 'NotoSansHebrew')
    case 'arabic':
      return expo('noto-sans-arabic', 'NotoSansArabic')
    case 'any': {
      const file = join(folderOf('@fontsource/unifontex'), 'files', 'unifontex-latin-400-normal.woff')
      const font = unwrapWoff(readFileSync(file))
      return { regular: font, bold: font }
    }
  }
}

function expo(name: string, file: string): ByWeight {
  const folder = folderOf(`@expo-google-fonts/${name}`)
  return {
    regular: join(folder, '400Regular', `${file}_400Regular.ttf`),
    bold: join(folder, '600SemiBold', `${file}_600SemiBold.ttf`),
  }
}
