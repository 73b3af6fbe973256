/** What every public function says of itself: units of what goes in, what comes out, errors, source, an example that runs. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import * as engine from './index.ts'

const here = import.meta.dirname
const texts = readdirSync(here, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))
  .map((name) => ({ folder: name.split('/')[0] ?? '', text: readFileSync(join(here, name), 'utf8') }))

/** Where a function is written, and the comment right above it. */
function docblockOf(name: string): { folder: string; doc: string } {
  for (const { folder, text } of texts) {
    const at = text.search(new RegExp(`^export function\\*? ${name}\\b`, 'm'))
    if (at < 0) continue
    const above = text.slice(0, at)
    return { folder, doc: above.slice(above.lastIndexOf('/**')) }
  }
  return { folder: '', doc: '' }
}

/** Measures, messages and draws rest on no formula. */
const plain = ['quantities', 'refusal', 'numerics']
/** They take what was checked where it came in. */
const refusesNothing = ['fullStroke', 'springElsewhere', 'supposedSpring', 'dueDates']

const names = Object.entries(engine).flatMap(([name, value]) =>
  typeof value === 'function' && name !== 'Refusal' ? [name] : [],
)

describe('the docblock of', () => {
  it.each(names)('%s', (name) => {
    const { folder, doc } = docblockOf(name)
    const wanted = ['@example', ...(plain.includes(folder) ? [] : ['@param', '@returns', '@source'])]
    if (!plain.includes(folder) && !refusesNothing.includes(name)) wanted.push('@throws')
    expect(wanted.filter((tag) => !doc.includes(tag))).toEqual([])
  })
})
