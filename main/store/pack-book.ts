import { deflateRawSync, inflateRawSync } from 'node:zlib'

/** A price book's text as it lies in the store, a tenth of its size; null stands for the sample. */
export function packBook(text: string | null): Buffer | null {
  return text === null ? null : deflateRawSync(Buffer.from(text, 'utf8'))
}

export function unpackBook(packed: Uint8Array | null): string | null {
  return packed === null ? null : inflateRawSync(packed).toString('utf8')
}
