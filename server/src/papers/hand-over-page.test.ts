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

// Invented figures of an invented job.
const full: HandOverPage = {
  ...empty,
  workshop: 'Quernfold Suspension Bench',
  rider: 'Mateus Corvalho-Wynd',
  riderMass: '82 kg',
  unit: 'U01, 35 mm air fork, 150 mm',
  asked: '50 h service',
  settings: [
    {
      place: 'pressure',
      name: 'Air pressure',
      figure: '88 psi',
      source: 'worked-out',
      detail: 'at 20 °C; P1 put on shows 86 psi',
    },
    { place: 'spacers', name: 'Volume spacers', figure: '1', source: 'measured-here', detail: 'of 10 ml each' },
    { place: 'rebound', name: 'Rebound, clicks from closed', figure: '8 of 18', source: 'measured-here', detail: null },
    {
      place: 'compression',
      name: 'Compression, clicks from closed',
      figure: '12 of 12',
      source: 'measured-here',
      detail: null,
    },
    {
      place: 'sag',
      name: 'Sag, mean of both directions',
      figure: '30 mm',
      source: 'measured-here',
      detail: '20 % of the stroke',
    },
    {
      place: 'bath-oil',
      name: 'Bath oil',
      figure: '10 ml left, 10 ml right',
      source: 'measured-here',
      detail: '46 mm²/s at 40 °C',
    },
  ],
  drawing: {
    stanchion: 35,
    bore: 32,
    shaft: 10,
    stroke: 150,
    freeLength: 160,
    negativeLength: 60,
    positiveLength: 240,
    spacerLength: 12,
    spacers: 1,
    sag: 30,
    oil: { spring: 10_000, damper: 10_000 },
  },
  found: [{ verdict: 'watch', what: 'drained, left leg', figure: '7 ml of 10 ml', source: 'measured-here' }],
  done: [{ what: 'foot fastener, left leg', figure: '5.5 N·m', source: 'makers-sheet' }],
  beforeAfter: [{ what: 'friction, half the loop', before: '21 N', after: '14 N', source: 'measured-here' }],
  holdsAir: 'Filled to 88 psi. After 24 h P1, put on again, showed 86 psi; the hose takes some air each time.',
  next: { service: 'Lower legs', hours: '30 to 60 riding hours', date: '27 June to 18 July' },
  beforeYouRide: ['Axle tight, wheel square in the fork.'],
  cautions: ['Never fill above 140 psi.'],
  receivedBy: { name: 'M. C.-W.', time: '3 May' },
  carriedOver: false,
}

test('the full page prints every setting where it is set, and not one coloured dot', async () => {
  const pdf = await renderHandOverPage(full)
  const text = ask('pdftotext', pdf, '-layout', '-').replace(/\s+/g, ' ')
  for (const said of ['88 psi', '8 of 18', '10 ml left, 10 ml right', '46 mm²/s', '82 kg', 'Holds its air', '→'])
    expect(text).toContain(said)
  // Drawn in colour by pdftoppm (PPM: three bytes a pixel): print is black, white and what lies between.
  const ppm = execFileSync('pdftoppm', ['-r', '60', '-'], { input: pdf, maxBuffer: 1e8 })
  const head = /^P6\s\d+\s\d+\s255\s/.exec(ppm.subarray(0, 40).toString('latin1'))
  const data = ppm.subarray(head?.[0].length ?? ppm.length)
  expect(data.length).toBeGreaterThan(1e6)
  let coloured = 0
  for (let i = 0; i < data.length; i += 3) if (data[i] !== data[i + 1] || data[i] !== data[i + 2]) coloured += 1
  expect(coloured).toBe(0)
})

test.each([
  ['Łukasz Żółć', /Łukasz Żółć/],
  ['Ιωάννης', /Ιωάννης/],
  ['Ђорђе', /Ђорђе/],
  // No font of ours has these: each sign prints as a box with its code point, its halves one above the other.
  ['漢字', /\b6F\b[\s\S]*\b22\b/],
  ['नमस्ते', /\b09\b[\s\S]*\b28\b/],
])('the name %s prints, or shows where it could not', async (rider, printed) => {
  expect(ask('pdftotext', await renderHandOverPage({ ...full, rider }), '-')).toMatch(printed)
})
