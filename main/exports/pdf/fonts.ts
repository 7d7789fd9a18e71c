import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'

const PACKAGE = '@expo-google-fonts/atkinson-hyperlegible-next'

/** Folder and files of the printed font, found beside the program like any package of it. */
export function fontFiles(): { readonly folder: string; readonly normal: string; readonly bold: string } {
  const folder = dirname(createRequire(import.meta.url).resolve(`${PACKAGE}/package.json`))
  return {
    folder,
    normal: join(folder, '400Regular', 'AtkinsonHyperlegibleNext_400Regular.ttf'),
    bold: join(folder, '600SemiBold', 'AtkinsonHyperlegibleNext_600SemiBold.ttf'),
  }
}
