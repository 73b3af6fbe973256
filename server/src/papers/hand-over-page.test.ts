import { execFileSync } from 'node:child_process'
import { expect, test } from 'vitest'
import { renderHandOverPage } from './hand-over-page.ts'
import type { HandOverPage } from './hand-over-page-data.ts'

const empty: HandOverPage = {
  workshop: 'Bench Özgür Иван Ωmega 漢',
  job: 'J02',
  date: '3 May',
  handedOverBy: 'Odalys',
  rider: null,
  riderMass: null,
  unit: 'U01',
  asked: null,
  settings: [],
  drawing: null,
  found: [],
  done: [],
  beforeAfter: [],
  holdsAir: null,
  next: null,
  beforeYouRide: [],
  declined: [],
  waivers: [],
  notes: [],
  carriedOver: true,
  cautions: [],
  receivedBy: null,
  address: 'http://localhost/units/U01',
}
// Read by poppler (pdftotext, pdfinfo, pdffonts), a program outside the project.
const ask = (program: string, pdf: Uint8Array, ...rest: string[]) =>
  execFileSync(program, ['-', ...rest], { input: pdf }).toString()

test('an empty page says so, on one page, with every font embedded', async () => {
  const pdf = await renderHandOverPage(empty)
  const text = ask('pdftotext', pdf, '-')
  for (const said of ['Özgür', 'Иван', 'Ωmega', 'No work was entered', 'Carried over']) expect(text).toContain(said)
  expect(text).not.toContain('Holds its air')
  expect(ask('pdfinfo', pdf)).toMatch(/Pages:\s+1\n/)
  const fonts = ask('pdffonts', pdf).trim().split('\n').slice(2)
  expect(fonts.length).toBeGreaterThan(1)
  for (const font of fonts) expect(font).toMatch(/\byes\s+yes\s+yes\b/)
})

test('long lists shrink to one page, cautions are all there', async () => {
  const long = Array.from({ length: 60 }, (_, i) => `${i} ${'a long sentence that wraps '.repeat(9)}`)
  const pdf = await renderHandOverPage({
    ...empty,
    cautions: Array.from({ length: 6 }, (_, i) => `Caution ${i}: ${'a sentence that has to be read '.repeat(4)}.`),
    declined: long,
    beforeYouRide: long,
    notes: long,
  })
  for (let i = 0; i < 6; i += 1) expect(ask('pdftotext', pdf, '-')).toContain(`Caution ${i}`)
  expect(ask('pdfinfo', pdf)).toMatch(/Pages:\s+1\n/)
  expect(ask('pdftotext', pdf, '-')).toMatch(/and \d+ more in the book/)
})
