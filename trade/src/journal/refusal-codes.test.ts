import { readdirSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { entryRefusalCodes } from './refusal-codes.ts'

it('every code is used where entries are refused, and says when', () => {
  const here = new URL('.', import.meta.url)
  const sources = readdirSync(here)
    .filter((name) => name.endsWith('.ts') && !name.includes('refusal-codes') && !name.endsWith('.test.ts'))
    .map((name) => readFileSync(new URL(name, here), 'utf8'))
    .join('\n')
  for (const [code, when] of Object.entries(entryRefusalCodes)) {
    expect(sources, code).toContain(`'${code}'`)
    expect(when, code).toMatch(/^[A-Z].*\.$/)
  }
})

it('stand in docs/errors.md with the same words, no more and no less', () => {
  const page = readFileSync(new URL('../../../docs/errors.md', import.meta.url), 'utf8')
  const table = page.split('## Entries of a job')[1]?.split('\n## ')[0] ?? ''
  const rows = [...table.matchAll(/^\| `([a-z.-]+)` +\| (.+?) +\|$/gm)]
  expect(Object.fromEntries(rows.map(([, code = '', when = '']) => [code, when]))).toEqual(entryRefusalCodes)
})
