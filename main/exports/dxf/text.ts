/**
 * Foreign text as a DXF text: one line (a line break would begin a new group), and none of the codes that readers
 * decode: %%c and its kind, ^J and its kind, \U+0041.
 */
export function dxfText(words: string): string {
  return words
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/gu, ' ')
    .replaceAll('%%', '% %')
    .replaceAll('^', '^ ')
    .replace(/\\(?=[UuMm]\+)/g, '\\ ')
}
