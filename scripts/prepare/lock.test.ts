import { execFile } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'

const runFile = promisify(execFile)
const here = fileURLToPath(new URL('./', import.meta.url))

describe('two prepares at once', () => {
  let checkout = ''
  beforeEach(() => {
    checkout = mkdtempSync(join(tmpdir(), 'legwork-lock-'))
    mkdirSync(join(checkout, 'scripts/prepare'), { recursive: true })
    for (const name of ['lock.mjs', 'root.mjs', 'trouble.mjs']) {
      cpSync(join(here, name), join(checkout, 'scripts/prepare', name))
    }
    writeFileSync(
      join(checkout, 'scripts/prepare/work.mjs'),
      `import { appendFileSync } from 'node:fs'
       import { setTimeout as wait } from 'node:timers/promises'
       import { withLock } from './lock.mjs'
       const log = (what) => appendFileSync(process.argv[2], what)
       await withLock(async () => { log('('); await wait(150); log(')') })`,
    )
  })
  afterEach(() => rmSync(checkout, { recursive: true, force: true }))

  const work = () => runFile(process.execPath, [join(checkout, 'scripts/prepare/work.mjs'), join(checkout, 'log')])
  const log = () => readFileSync(join(checkout, 'log'), 'utf8')

  it('take turns', async () => {
    await Promise.all([work(), work(), work()])
    expect(log()).toBe('()()()')
  })

  it('a lock left by a process that is gone is taken over, by one at a time', async () => {
    const gone = runFile(process.execPath, ['-e', ''])
    const pid = gone.child.pid
    await gone
    writeFileSync(join(checkout, '.prepare.lock'), String(pid))
    await Promise.all([work(), work(), work()])
    expect(log()).toBe('()()()')
  })
})
