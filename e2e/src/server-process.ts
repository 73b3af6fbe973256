/** The real server as its own process, on its own data folder, started and killed as a machine would do it. */
import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp } from 'node:fs/promises'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = resolve(dirname(fileURLToPath(import.meta.url)), '../..')

export interface ServerProcess {
  address: string
  dataFolder: string
  start: () => Promise<void>
  /** SIGKILL: no clean-up of any kind. */
  kill: () => Promise<void>
}

/** A port nobody listens on at this moment. */
export async function freePort(): Promise<number> {
  const probe = createServer()
  probe.listen(0, '127.0.0.1')
  await once(probe, 'listening')
  const address = probe.address()
  const port = typeof address === 'object' && address ? address.port : 0
  probe.close()
  await once(probe, 'close')
  return port
}

async function ready(address: string, child: ChildProcess, said: () => string): Promise<void> {
  for (let attempt = 0; attempt < 200; attempt++) {
    if (child.exitCode !== null) throw new Error(`the server ended with ${child.exitCode}: ${said()}`)
    const answer = await fetch(`${address}/healthz`).catch(() => null)
    if (answer?.ok) return
    await new Promise((resume) => setTimeout(resume, 50))
  }
  throw new Error(`no answer from ${address} in 10 s: ${said()}`)
}

/** Prepares a server with a fixed clock on a new data folder; nothing runs until `start`. */
export async function serverProcess(options: { now?: string } = {}): Promise<ServerProcess> {
  const dataFolder = await mkdtemp(join(tmpdir(), 'legwork-e2e-'))
  const port = await freePort()
  const address = `http://127.0.0.1:${port}`
  let child: ChildProcess | null = null
  return {
    address,
    dataFolder,
    async start() {
      let output = ''
      const started = spawn(process.execPath, [join(root, 'cli/dist/legwork.js'), 'start'], {
        cwd: root,
        env: {
          ...process.env,
          LEGWORK_DATA: dataFolder,
          LEGWORK_PORT: String(port),
          ...(options.now ? { LEGWORK_NOW: options.now } : {}),
        },
        stdio: ['ignore', 'pipe', 'pipe'],
      })
      started.stdout?.on('data', (chunk) => {
        output += chunk
      })
      started.stderr?.on('data', (chunk) => {
        output += chunk
      })
      child = started
      await ready(address, started, () => output)
    },
    async kill() {
      if (!child || child.exitCode !== null || child.signalCode !== null) return
      const ended = once(child, 'exit')
      child.kill('SIGKILL')
      await ended
      child = null
    },
  }
}
