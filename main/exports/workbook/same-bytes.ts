import JsZip from 'jszip'

/** Oldest date that a zip entry can carry. */
const ZIP_EPOCH = new Date(Date.UTC(1980, 0, 1))

/** The same parts packed again in one order with one date, so that the same content is the same file. */
export async function packedAlike(file: Uint8Array): Promise<Uint8Array> {
  const from = await JsZip.loadAsync(file)
  const to = new JsZip()
  for (const name of Object.keys(from.files).sort()) {
    const entry = from.files[name]
    if (entry === undefined || entry.dir) continue
    to.file(name, await entry.async('uint8array'), { date: ZIP_EPOCH, createFolders: false })
  }
  return to.generateAsync({
    type: 'uint8array',
    compression: 'DEFLATE',
    compressionOptions: { level: 6 },
    platform: 'UNIX',
  })
}
