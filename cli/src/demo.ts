/** Serves a throw-away copy of the demo workshop. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readSettings } from './settings.ts'
import { serve } from './start.ts'

export async function demo(): Promise<void> {
  const { database: _, ...settings } = readSettings(process.env, process.platform)
  const data = mkdtempSync(join(tmpdir(), 'legwork-demo-'))
  process.once('exit', () => rmSync(data, { recursive: true, force: true }))
  const { address, request } = await serve({ ...settings, data })
  await request('POST', '/api/demo')
  process.stdout.write(`The demo workshop is open at ${address}\nIt lies in ${data} and goes when you stop it.\n`)
}
