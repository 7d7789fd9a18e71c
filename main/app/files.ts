import {
  closeSync,
  fsyncSync,
  linkSync,
  openSync,
  readFileSync,
  realpathSync,
  renameSync,
  statSync,
  unlinkSync,
  writeSync,
} from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { fail, ok, type Result } from '../../core/units/index.ts'

/** Reads a text file, or says in a sentence why it cannot be read. */
export function readTextFile(path: string): Result<string, string> {
  try {
    const bytes = readFileSync(path)
    return ok(new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes))
  } catch (error) {
    if (error instanceof TypeError) return fail(`${path} is not a text file in UTF-8.`)
    return fail(`${path} cannot be read: ${reasonOf(error)}.`)
  }
}

/** `replace` puts the file in the place of one that is there; `create` leaves that one and refuses. */
export type WriteManner = 'replace' | 'create'

/**
 * Writes a file whole or not at all: under another name in the same folder, then renamed. What is no file on a disk
 * (a pipe, a terminal, a device) is written into.
 */
export function writeWhole(
  path: string,
  content: string | Uint8Array,
  manner: WriteManner,
): Result<null, string> {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content
  try {
    const kind = kindOf(path)
    if (kind === 'folder') return fail(`${path} is a folder; name a file in it.`)
    if (kind !== 'nothing' && manner === 'create') {
      return fail(`${path} is already there and was left as it is; name another file.`)
    }
    if (kindOf(dirname(path)) !== 'folder')
      return fail(`The folder ${dirname(path)} is not there; make it first.`)
    if (kind === 'other') writeInto(path, bytes, 'w')
    // a link stays a link: what it leads to is replaced
    else writeBeside(kind === 'file' ? realpathSync(path) : path, bytes, manner)
    return ok(null)
  } catch (error) {
    return fail(`${path} cannot be written: ${reasonOf(error)}. Nothing was changed.`)
  }
}

function writeBeside(path: string, bytes: Uint8Array, manner: WriteManner): void {
  const other = join(dirname(path), `.${basename(path).slice(0, 100)}.${process.pid}.part`)
  try {
    writeInto(other, bytes, 'wx')
    if (manner === 'replace') renameSync(other, path)
    // a link is refused where a file has come up meanwhile; a rename would take its place
    else linkSync(other, path)
  } finally {
    unlinkQuietly(other)
  }
}

function writeInto(path: string, bytes: Uint8Array, flag: 'w' | 'wx'): void {
  const handle = openSync(path, flag)
  try {
    for (let at = 0; at < bytes.length; ) at += writeSync(handle, bytes, at)
    if (flag === 'wx') fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}

function unlinkQuietly(path: string): void {
  try {
    unlinkSync(path)
  } catch {
    // renamed away, or never made: either way there is nothing to clear
  }
}

function kindOf(path: string): 'nothing' | 'file' | 'folder' | 'other' {
  try {
    const found = statSync(path)
    return found.isFile() ? 'file' : found.isDirectory() ? 'folder' : 'other'
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return 'nothing'
    throw error
  }
}

const REASONS: { readonly [code: string]: string } = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of the path is a file, not a folder',
  EACCES: 'it may not be opened by this user',
  EPERM: 'the system does not allow it',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'it is a link to itself',
  EMFILE: 'too many files are open',
  EIO: 'the disk has a fault',
}

function reasonOf(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException
  return REASONS[code ?? ''] ?? (code === undefined ? message : `the system says ${code}`)
}
