import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { root } from './root.mjs'
import { Trouble } from './trouble.mjs'

const lockfile = join(root, 'package-lock.json')
const installed = join(root, 'node_modules/.package-lock.json')
const stampFile = join(root, 'node_modules/.prepared.json')

// Only what says where packages come from is passed on. The rest of npm's own variables describe the script that called
// us (`omit`, `workspace`, `dry_run` …) and would bend the install.
const passedOn =
  /^npm_config_(registry|cache|userconfig|globalconfig|proxy|https?_proxy|noproxy|ca|cafile|strict_ssl)$/i

/** The environment for a child that must not inherit the calling npm script or a production setting. */
export function cleanEnvironment(environment = process.env) {
  return Object.fromEntries(
    Object.entries(environment).filter(
      ([name]) => name !== 'NODE_ENV' && name !== 'INIT_CWD' && (!/^npm_/i.test(name) || passedOn.test(name)),
    ),
  )
}

/** `node:sqlite` without a flag came with 22.13; where it is there, nothing has to be compiled. */
export function hasOwnSqlite() {
  const [major, minor] = process.versions.node.split('.').map(Number)
  return major > 22 || (major === 22 && minor >= 13)
}

function nativeSqliteLoads() {
  const code = "new (require('better-sqlite3'))(':memory:').close()"
  return spawnSync(process.execPath, ['-e', code], { cwd: join(root, 'server'), stdio: 'ignore' }).status === 0
}

function lockDigest() {
  return createHash('sha256').update(readFileSync(lockfile)).digest('hex')
}

function stampNow() {
  const machine = `${process.platform}-${process.arch}`
  return { lock: lockDigest(), machine, node: process.version, abi: process.versions.modules }
}

function writeStamp(stamp) {
  mkdirSync(join(root, 'node_modules'), { recursive: true })
  writeFileSync(stampFile, `${JSON.stringify(stamp)}\n`)
}

function readStamp() {
  try {
    return JSON.parse(readFileSync(stampFile, 'utf8'))
  } catch {
    return undefined
  }
}

/** Whether node_modules already is what the lockfile says, as after an `npm install` by hand. */
function matchesLockfile() {
  if (!existsSync(installed)) return false
  const wanted = JSON.parse(readFileSync(lockfile, 'utf8')).packages
  const present = JSON.parse(readFileSync(installed, 'utf8')).packages
  return Object.entries(wanted).every(([path, entry]) => {
    if (!path.includes('node_modules/') || entry.optional) return true
    // A room of our own that came in later
    if (entry.link) return existsSync(join(root, path, 'package.json'))
    return present[path]?.version === entry.version && existsSync(join(root, path, 'package.json'))
  })
}

export function installIsStale() {
  const stamp = readStamp()
  const now = stampNow()
  return !stamp || Object.keys(now).some((key) => stamp[key] !== now[key])
}

function npm(args) {
  // Under `npm run` the npm that called us is known exactly; outside it the one beside Node or on the path serves.
  const caller = process.env.npm_execpath
  const [command, first] = caller && /npm-cli\.c?js$/.test(caller) ? [process.execPath, [caller]] : ['npm', []]
  const answer = spawnSync(command, [...first, ...args], {
    cwd: root,
    env: cleanEnvironment(),
    stdio: ['ignore', 'ignore', 'inherit'],
  })
  if (answer.error) throw new Trouble(`npm could not be started (${answer.error.code}); install npm beside Node.`)
  return answer.status
}

function installPackages() {
  process.stderr.write('legwork: installing packages (once; up to a few minutes) …\n')
  const scripts = hasOwnSqlite() ? ['--ignore-scripts'] : []
  const status = npm(['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error', ...scripts])
  if (status !== 0) {
    throw new Trouble(`npm ci ended with ${status}; see its lines above, check the network, and run the command again.`)
  }
}

function buildNativeSqlite() {
  process.stderr.write('legwork: building better-sqlite3 for this Node (once; about a minute) …\n')
  npm(['rebuild', 'better-sqlite3', '--loglevel=error'])
  if (nativeSqliteLoads()) return
  throw new Trouble(
    `Node ${process.versions.node} has no SQLite of its own and better-sqlite3 could not be built; ` +
      'use Node 22.13 or newer, or install a C++ compiler, make and python3 and run the command again.',
  )
}

/** Brings node_modules to what the lockfile says, for this Node. */
export function install() {
  const stamp = readStamp()
  const now = stampNow()
  const movedMachine = stamp !== undefined && stamp.machine !== now.machine
  if (movedMachine || !matchesLockfile()) installPackages()
  if (!hasOwnSqlite() && !nativeSqliteLoads()) buildNativeSqlite()
  writeStamp(now)
}
