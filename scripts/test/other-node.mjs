import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { cleanEnvironment } from '../prepare/install.mjs'
import { root } from '../prepare/root.mjs'
import { run } from './run.mjs'
import { suite } from './suite.mjs'

const command = join(root, 'cli/dist/legwork.js')

async function freePort() {
  const server = createServer()
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve))
  const { port } = server.address()
  await new Promise((resolve) => server.close(resolve))
  return port
}

async function fetchNode(version) {
  const { code, output } = await run(
    'npx',
    ['-y', '-p', `node@${version}`, 'node', '-p', 'JSON.stringify([process.execPath, process.version])'],
    { capture: true },
  )
  if (code !== 0) throw new Error(`Node ${version} could not be fetched through npx (${code})`)
  const [path, is] = JSON.parse(output)
  if (!is.startsWith(`v${version}.`)) throw new Error(`npx gave Node ${is} where ${version} was asked for`)
  return path
}

async function starts(node) {
  const folder = mkdtempSync(join(tmpdir(), 'legwork-node-'))
  const port = await freePort()
  const environment = { ...cleanEnvironment(), LEGWORK_DATA: folder, LEGWORK_PORT: String(port) }
  const server = spawn(node, [command, 'start'], {
    cwd: root,
    env: environment,
    stdio: ['ignore', 'ignore', 'inherit'],
  })
  try {
    for (const giveUpAt = Date.now() + 20_000; Date.now() < giveUpAt; await wait(100)) {
      const answer = await fetch(`http://127.0.0.1:${port}/healthz`).catch(() => undefined)
      if (answer?.ok) return (await answer.json()).ok === true
      if (server.exitCode !== null) return false
    }
    return false
  } finally {
    server.kill('SIGKILL')
    rmSync(folder, { recursive: true, force: true })
  }
}

/** By hand: an adapter in line with the wrench, set = wanted·L/(L + E) = 5·0.2/(0.2 + 0.05) = 4 N·m. */
async function calculates(node) {
  const question = { wanted: '5 N·m', wrenchLength: '200 mm', adapterLength: '50 mm' }
  const input = JSON.stringify(question)
  const { code, output } = await run(node, [command, 'calc', 'torque'], { capture: true, input })
  return code === 0 && Math.abs(JSON.parse(output).set - 4) < 1e-9
}

/** The command and the store on another Node than the one that runs the tests. */
export async function otherNode(version) {
  const node = await fetchNode(version)
  const checks = [
    ['start answers /healthz', await starts(node)],
    ['calc answers', await calculates(node)],
  ]
  for (const [what, held] of checks) process.stdout.write(`${held ? 'passed' : 'FAILED'}: Node ${version}, ${what}\n`)
  const store = await suite('unit', ['server/src/store', 'server/src/app.test.ts', 'server/src/records'], { node })
  const passed = checks.filter(([, held]) => held).length
  return { passed: passed + store.passed, failed: checks.length - passed + store.failed }
}
