/** Opens this computer's book and serves it until it is told to end. */
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Started, StartRefused, startServer } from '@legwork/server'
import { readSettings, type Settings } from './settings.ts'
import { Trouble } from './trouble.ts'

/** The built pages lie beside the built command. */
const pages = join(dirname(fileURLToPath(import.meta.url)), '../../web/dist')

/** @throws Trouble, one sentence, when the server cannot start */
export async function serve(settings: Settings): Promise<Started> {
  const now = process.env.LEGWORK_NOW
  try {
    const started = await startServer({ ...settings, pages, ...(now ? { now } : {}) })
    const end = (): void => {
      started.close().then(
        () => process.exit(0),
        () => process.exit(1),
      )
    }
    process.once('SIGINT', end)
    process.once('SIGTERM', end)
    return started
  } catch (trouble) {
    if (trouble instanceof StartRefused) throw new Trouble(trouble.message)
    throw trouble
  }
}

export async function start(): Promise<void> {
  const settings = readSettings(process.env, process.platform)
  const { address } = await serve(settings)
  process.stdout.write(`Legwork is open at ${address}\nThe book lies in ${settings.data}\n`)
}
