import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'

const root = fileURLToPath(new URL('../', import.meta.url))

interface Manifest {
  readonly workspaces?: readonly string[]
  readonly dependencies?: Readonly<Record<string, string>>
  readonly devDependencies?: Readonly<Record<string, string>>
  readonly optionalDependencies?: Readonly<Record<string, string>>
}

function manifest(folder: string): Manifest {
  // The shape of a package.json is npm's, and npm has refused a broken one long before this test runs.
  return JSON.parse(readFileSync(`${root}${folder}package.json`, 'utf8')) as Manifest
}

function declaredIn({ dependencies, devDependencies, optionalDependencies }: Manifest): [string, string][] {
  return Object.entries({ ...dependencies, ...devDependencies, ...optionalDependencies })
}

const rooms = manifest('').workspaces ?? []
const all = ['', ...rooms.map((room) => `${room}/`)].flatMap((folder) => declaredIn(manifest(folder)))
const foreign = all.filter(([name]) => !name.startsWith('@legwork/'))

/** Rows `| name | where | reason |` of the page. */
const page = readFileSync(`${root}docs/dependencies.md`, 'utf8')
const rows = [...page.matchAll(/^\| `([^`]+)` +\| ([^|]*?) *\| ([^|]*?) *\|$/gm)]

describe('docs/dependencies.md', () => {
  it('names every package of every package.json, and no other', () => {
    const named = rows.map(([, name]) => name).sort()
    expect(named).toEqual([...new Set(foreign.map(([name]) => name))].sort())
  })

  it('says for each in which room it is used', () => {
    const wrong = rows.filter(([, name = '', where = '']) => {
      const used = ['', ...rooms.map((room) => `${room}/`)].filter((folder) =>
        declaredIn(manifest(folder)).some(([declared]) => declared === name),
      )
      const said = used.map((folder) => folder.slice(0, -1) || 'root').join(', ')
      return where.trim() !== said
    })
    expect(wrong.map(([row]) => row)).toEqual([])
  })

  it('gives each a reason of at least a few words', () => {
    expect(rows.filter(([, , , reason = '']) => reason.trim().split(/\s+/).length < 4).map(([row]) => row)).toEqual([])
  })

  // A range would let two installs of one commit differ
  it('every package is pinned to one version', () => {
    expect(foreign.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([])
  })
})
