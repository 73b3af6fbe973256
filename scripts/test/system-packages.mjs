import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'
import { run } from './run.mjs'

function isOnPath(program) {
  return (process.env.PATH ?? '').split(delimiter).some((folder) => {
    try {
      accessSync(join(folder, program), constants.X_OK)
      return true
    } catch {
      return false
    }
  })
}

const isRoot = () => process.getuid?.() === 0

async function apt(args) {
  const { code } = await run('apt-get', args, { environment: { DEBIAN_FRONTEND: 'noninteractive' } })
  return code
}

/** Sees to programs the tests call. `wanted` is program → the Debian package that brings it. */
export async function needPrograms(wanted) {
  const missing = Object.keys(wanted).filter((program) => !isOnPath(program))
  if (missing.length === 0) return
  const packages = [...new Set(missing.map((program) => wanted[program]))]
  const byHand = `install ${packages.join(' ')} (as root: apt-get install ${packages.join(' ')})`
  if (!isRoot() || !isOnPath('apt-get')) {
    throw new Error(`${missing.join(', ')} missing and only root on Debian can install it here; ${byHand}.`)
  }
  await apt(['update', '-qq'])
  await apt(['install', '-y', '-qq', '--no-install-recommends', ...packages])
  const still = missing.filter((program) => !isOnPath(program))
  if (still.length > 0)
    throw new Error(`${still.join(', ')} could not be installed; ${byHand} and run the tests again.`)
}
