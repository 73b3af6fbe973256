#!/usr/bin/env node
// `node scripts/prepare.mjs [install|build]`: makes a bare checkout runnable, and does nothing where nothing is stale.
// Plain Node and no packages: it runs before there are any. It speaks on standard error only, because
// `npm run -s legwork -- calc` hands its standard output to the next program.
import { build, staleBundles } from './prepare/build.mjs'
import { install, installIsStale } from './prepare/install.mjs'
import { withLock } from './prepare/lock.mjs'
import { Trouble } from './prepare/trouble.mjs'

const oldestNode = [20, 19]

function refuseOldNode() {
  const [major, minor] = process.versions.node.split('.').map(Number)
  if (major < oldestNode[0] || (major === oldestNode[0] && minor < oldestNode[1])) {
    throw new Trouble(`Node ${process.versions.node} is too old; install Node ${oldestNode.join('.')} or newer.`)
  }
}

async function prepare(mode) {
  if (mode !== 'install' && mode !== 'build') {
    throw new Trouble(`prepare does not know '${mode}'; it takes 'install' or 'build'.`)
  }
  refuseOldNode()
  const wantsBuild = mode === 'build'
  if (!installIsStale() && !(wantsBuild && staleBundles().length > 0)) return
  await withLock(async () => {
    // Looked at again: whoever held the lock may have done the work meanwhile.
    if (installIsStale()) install()
    if (wantsBuild) await build(staleBundles())
  })
}

try {
  await prepare(process.argv[2] ?? 'build')
} catch (error) {
  process.stderr.write(`legwork: ${error instanceof Trouble ? error.message : (error?.stack ?? error)}\n`)
  process.exitCode = 1
}
