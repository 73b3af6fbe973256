import { homedir } from 'node:os'
import { join } from 'node:path'
import { Trouble } from './trouble.ts'

/** Where the book lies and where it is served, from the environment. */
export interface Settings {
  readonly data: string
  readonly host: string
  readonly port: number
  /** Address of a PostgreSQL database; without one the book is a SQLite file in `data`. */
  readonly database?: string
}

type Environment = Readonly<Record<string, string | undefined>>

/**
 * Reads LEGWORK_DATA, LEGWORK_HOST, LEGWORK_PORT and LEGWORK_DATABASE; an empty variable counts as not set.
 *
 * @throws Trouble for a port that is none
 * @example readSettings({ LEGWORK_PORT: '4800' }, 'linux').port // 4800
 */
export function readSettings(environment: Environment, platform: NodeJS.Platform): Settings {
  const database = environment.LEGWORK_DATABASE
  return {
    data: environment.LEGWORK_DATA || userDataFolder(environment, platform),
    host: environment.LEGWORK_HOST || '127.0.0.1',
    port: readPort(environment.LEGWORK_PORT || '4720'),
    ...(database ? { database } : {}),
  }
}

function readPort(text: string): number {
  const port = Number(text)
  if (/^\d+$/.test(text) && port >= 1 && port <= 65_535) return port
  throw new Trouble(`LEGWORK_PORT is '${text}'; it must be a whole number from 1 to 65535, such as 4720.`)
}

/** Where each system wants a program's lasting data: XDG base directories on Linux, AppData and Application Support else. */
function userDataFolder(environment: Environment, platform: NodeJS.Platform): string {
  if (platform === 'win32') return join(environment.LOCALAPPDATA || join(homedir(), 'AppData', 'Local'), 'Legwork')
  if (platform === 'darwin') return join(homedir(), 'Library', 'Application Support', 'Legwork')
  return join(environment.XDG_DATA_HOME || join(homedir(), '.local', 'share'), 'legwork')
}
