import { readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { root } from './root.mjs'
import { Trouble } from './trouble.mjs'

const lockFile = join(root, '.prepare.lock')
const guardFile = join(root, '.prepare.lock.guard')
const patienceMs = 10 * 60_000

function isAlive(pid) {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return error.code === 'EPERM'
  }
}

function take() {
  try {
    writeFileSync(lockFile, String(process.pid), { flag: 'wx' })
    return true
  } catch (error) {
    if (error.code === 'EEXIST') return false
    throw new Trouble(`${root} can't be written (${error.code}); make it writable, or run from a copy that is.`)
  }
}

function isAbandoned() {
  try {
    const holder = Number(readFileSync(lockFile, 'utf8'))
    // An empty file is a holder between creating it and writing its number into it.
    return holder > 0 && !isAlive(holder)
  } catch {
    return false
  }
}

/**
 * Removes a lock whose holder is gone. Guarded, and looked at again inside the guard: two that both saw the dead holder
 * would otherwise remove the lock the quicker one has taken since.
 */
function clearIfAbandoned() {
  if (!isAbandoned()) return
  try {
    writeFileSync(guardFile, '', { flag: 'wx' })
  } catch {
    if (Date.now() - (statSync(guardFile, { throwIfNoEntry: false })?.mtimeMs ?? Date.now()) > 10_000) {
      rmSync(guardFile, { force: true })
    }
    return
  }
  try {
    if (isAbandoned()) rmSync(lockFile, { force: true })
  } finally {
    rmSync(guardFile, { force: true })
  }
}

/** Runs `work` alone among all prepares of this checkout, so that two starts at once don't install into one another. */
export async function withLock(work) {
  const giveUpAt = Date.now() + patienceMs
  let told = false
  while (!take()) {
    if (Date.now() > giveUpAt) {
      throw new Trouble(`another start has been preparing for ten minutes; stop it, remove ${lockFile} and try again.`)
    }
    if (!told) process.stderr.write('legwork: another start is preparing; waiting for it.\n')
    told = true
    clearIfAbandoned()
    await wait(200)
  }
  try {
    return await work()
  } finally {
    rmSync(lockFile, { force: true })
  }
}
