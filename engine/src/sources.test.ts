/** docs/sources.md and what docblocks and reference tables name, both ways. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const room = join(import.meta.dirname, '..')
const page = readFileSync(join(room, '../docs/sources.md'), 'utf8')
const listed = [...page.matchAll(/^\| ([^|]+) \| [^|]+ \|/gm)]
  .map(([, name = '']) => name.trim())
  .filter((name) => name !== 'name' && !name.startsWith('-'))

function texts(folder: string, ending: string): string[] {
  return readdirSync(join(room, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(ending) && !name.endsWith('.test.ts'))
    .map((name) => readFileSync(join(room, folder, name), 'utf8'))
}

const docblocks = texts('src', '.ts').flatMap((text) =>
  [...text.matchAll(/@source (.+)/g)].map(([, said = '']) => said),
)
const tables = texts('reference', '.json').flatMap((text) =>
  [...text.matchAll(/"source": "([^"]+)"/g)].map(([, said = '']) => said),
)
/** Sources that point at another of our own docblocks or tables. */
const ours = ['see the table']

describe('sources', () => {
  it('are there at all', () => {
    expect(listed.length).toBeGreaterThan(20)
    expect(docblocks.length).toBeGreaterThan(25)
  })

  it.each([...new Set([...docblocks, ...tables])])('listed: %s', (said) => {
    const known = [...listed, ...ours].some((name) => said.toLowerCase().includes(name.toLowerCase()))
    expect(known).toBe(true)
  })

  it.each(listed)('used: %s', (name) => {
    const used = [...docblocks, ...tables].some((said) => said.toLowerCase().includes(name.toLowerCase()))
    expect(used).toBe(true)
  })
})
