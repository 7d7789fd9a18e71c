import { closeSync, openSync, readSync } from 'node:fs'

/** "KWRT": marks a SQLite file as this program's store. */
export const APPLICATION_ID = 0x4b575254

/** What the first 100 bytes of a file say of it (SQLite file format, section 1.3), read without opening it as a store. */
export interface FileHeader {
  readonly kind: 'absent' | 'empty' | 'sqlite' | 'other'
  readonly userVersion: number
  readonly applicationId: number
}

const MAGIC = Buffer.from('SQLite format 3\0', 'latin1')

/** Throws the system's error where the file is there and cannot be read. */
export function readHeader(file: string): FileHeader {
  const bytes = firstBytes(file)
  if (bytes === null) return { kind: 'absent', userVersion: 0, applicationId: 0 }
  if (bytes.length === 0) return { kind: 'empty', userVersion: 0, applicationId: 0 }
  if (bytes.length < 100 || !bytes.subarray(0, 16).equals(MAGIC)) {
    return { kind: 'other', userVersion: 0, applicationId: 0 }
  }
  return { kind: 'sqlite', userVersion: bytes.readUInt32BE(60), applicationId: bytes.readUInt32BE(68) }
}

function firstBytes(file: string): Buffer | null {
  let handle: number
  try {
    handle = openSync(file, 'r')
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null
    throw error
  }
  try {
    const bytes = Buffer.alloc(100)
    return bytes.subarray(0, readSync(handle, bytes, 0, 100, 0))
  } finally {
    closeSync(handle)
  }
}
