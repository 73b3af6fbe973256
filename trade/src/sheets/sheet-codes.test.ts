/** Codes of sheets in docs/errors.md and in the code, both ways. */
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, it } from 'vitest'

const folder = fileURLToPath(new URL('.', import.meta.url))
const source = readdirSync(folder)
  .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))
  .map((name) => readFileSync(`${folder}/${name}`, 'utf8'))
  .join('\n')
const page = readFileSync(fileURLToPath(new URL('../../../docs/errors.md', import.meta.url)), 'utf8')

it('every code of a sheet stands in docs/errors.md, and no other', () => {
  const used = [
    ...source.matchAll(/\.refuse\(\s*[^,]+,\s*'([a-z-]+)'/g),
    ...source.matchAll(/\bproblem\(\s*[^,]+,\s*'([a-z-]+)'/g),
    ...source.matchAll(/'sheet\.([a-z-]+)'(?=,\s*came)/g),
  ].map(([, code]) => `sheet.${code}`)
  const section = page.split('## Sheets')[1]?.split('\n## ')[0] ?? ''
  const written = [...section.matchAll(/^\| `(sheet\.[a-z-]+)`/gm)].map(([, code]) => code)
  expect([...new Set(used)].sort()).toEqual([...written].sort())
})
