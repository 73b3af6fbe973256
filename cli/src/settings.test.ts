import { homedir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readSettings } from './settings.ts'
import { Trouble } from './trouble.ts'

describe('settings from the environment', () => {
  it('listens on this computer only, on 4720, unless told otherwise', () => {
    const { host, port, database } = readSettings({}, 'linux')
    expect({ host, port, database }).toEqual({ host: '127.0.0.1', port: 4720, database: undefined })
  })

  // XDG Base Directory Specification 0.8: $XDG_DATA_HOME, and $HOME/.local/share where it is unset or empty
  it.each([
    [{ XDG_DATA_HOME: '/data' }, '/data/legwork'],
    [{ XDG_DATA_HOME: '' }, join(homedir(), '.local/share/legwork')],
    [{}, join(homedir(), '.local/share/legwork')],
  ])('keeps the book where XDG says: %j', (environment, folder) => {
    expect(readSettings(environment, 'linux').data).toBe(folder)
  })

  it('LEGWORK_DATA wins', () => {
    expect(readSettings({ LEGWORK_DATA: '/book', XDG_DATA_HOME: '/data' }, 'linux').data).toBe('/book')
  })

  // TCP ports are 16 bits (RFC 9293, 3.1); 0 would mean 'any', and nobody would find the book again
  it.each(['0', '65536', '-1', '47.20', 'http', '0x1270'])('refuses %s as a port and says what is allowed', (port) => {
    expect(() => readSettings({ LEGWORK_PORT: port }, 'linux')).toThrow(Trouble)
    expect(() => readSettings({ LEGWORK_PORT: port }, 'linux')).toThrow(
      `'${port}'; it must be a whole number from 1 to 65535`,
    )
  })
})
