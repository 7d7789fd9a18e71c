import { homedir } from 'node:os'
import { join } from 'node:path'

/** Where the operating system keeps a user's program data; the store's folder where none is named. */
export function defaultStoreFolder(
  platform: NodeJS.Platform = process.platform,
  environment: NodeJS.ProcessEnv = process.env,
  home: string = homedir(),
): string {
  if (platform === 'win32') return join(environment.APPDATA ?? join(home, 'AppData', 'Roaming'), 'Kerfwright')
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Kerfwright')
  return join(environment.XDG_DATA_HOME || join(home, '.local', 'share'), 'kerfwright')
}
