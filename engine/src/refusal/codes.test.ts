/** docs/errors.md and the codes, both ways; and codes against the places that use them. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { refusalCodes } from './codes.ts'

const root = join(import.meta.dirname, '../../..')

function sourcesUnder(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts') && !name.endsWith('codes.ts'))
    .map((name) => readFileSync(join(root, folder, name), 'utf8'))
}

const page =
  readFileSync(join(root, 'docs/errors.md'), 'utf8').split('## Quantities and calculations')[1]?.split('\n## ')[0] ?? ''
const listed = Object.fromEntries(
  [...page.matchAll(/^\| `([a-z-]+)` +\| (.+?) +\|$/gm)].map(([, code = '', when = '']) => [code, when]),
)

describe('codes of refusals', () => {
  it('stand in docs/errors.md with the same words, no more and no less', () => {
    expect(listed).toEqual(refusalCodes)
  })

  it('are all used', () => {
    const code = [
      ...sourcesUnder('engine/src'),
      ...sourcesUnder('contract/src/calculations'),
      ...sourcesUnder('cli/src'),
    ].join('\n')
    expect(Object.keys(refusalCodes).filter((name) => !code.includes(`'${name}'`))).toEqual([])
  })
})
