import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import type { Face } from '../../../core/papers/index.ts'

const packages = createRequire(import.meta.url)
const folderOf = (name: string): string =>
  dirname(packages.resolve(`@expo-google-fonts/${name}/package.json`))

/** Files of the printed fonts by face and weight, found beside the program like any package of it. */
export function fontFiles(): {
  readonly [face in Face]: { readonly regular: string; readonly bold: string }
} {
  const own = folderOf('atkinson-hyperlegible-next')
  const other = folderOf('noto-sans')
  return {
    own: {
      regular: join(own, '400Regular', 'AtkinsonHyperlegibleNext_400Regular.ttf'),
      bold: join(own, '600SemiBold', 'AtkinsonHyperlegibleNext_600SemiBold.ttf'),
    },
    other: {
      regular: join(other, '400Regular', 'NotoSans_400Regular.ttf'),
      bold: join(other, '600SemiBold', 'NotoSans_600SemiBold.ttf'),
    },
  }
}
