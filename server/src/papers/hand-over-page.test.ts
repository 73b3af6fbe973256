import { execFileSync } from 'node:child_process'
import { forkShapes, outlinesOf } from '@legwork/drawing'
import { forkForTests } from '@legwork/drawing/fork-for-tests.ts'
import { expect, test } from 'vitest'
import { renderHandOverPage } from './hand-over-page.ts'
import type { HandOverPage } from './hand-over-page-data.ts'

const shop = { name: 'Bench Özgür Иван Ωmega 漢', address: null, phone: null, terms: null, home: false }
const empty: HandOverPage = {
  shop,
  job: 'J02',
  date: '3 May',
  handedOverBy: 'Odalys',
  rider: null,
  riderKit: null,
  unit: 'U01',
  serial: null,
  asked: null,
  settings: [],
  coil: false,
  drawing: null,
  found: [],
  limits: null,
  done: [],
  hands: null,
  beforeAfter: [],
  holdsAir: [],
  elsewhere: [],
  next: [],
  beforeYouRide: [],
  declined: [],
  kept: [],
  carriedOver: false,
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
  for (const said of ['Özgür', 'Иван', 'Ωmega', 'No work was entered']) expect(text).toContain(said)
  expect(text).not.toContain('Holds its air')
  expect(ask('pdfinfo', pdf)).toMatch(/Pages:\s+1\n/)
  const fonts = ask('pdffonts', pdf).trim().split('\n').slice(2)
  expect(fonts.length).toBeGreaterThan(1)
  for (const font of fonts) expect(font).toMatch(/\byes\s+yes\s+yes\b/)
})

test('long lists go on over the page, under a head and with page numbers, and nothing is left out', async () => {
  const long = (what: string) =>
    Array.from({ length: 24 }, (_, i) => `${what} ${i} ${'a sentence that wraps '.repeat(9)}`)
  const cautions = Array.from({ length: 6 }, (_, i) => `Caution ${i}: ${'a sentence that has to be read '.repeat(4)}.`)
  const [declined, kept, beforeYouRide] = [long('Declined'), long('Kept'), long('Check')]
  // One text as long as the book takes it.
  const done = [{ what: 'word '.repeat(700), figure: '5 N·m' }]
  const pdf = await renderHandOverPage({
    ...full,
    asked: 'asked '.repeat(90),
    cautions,
    declined,
    beforeYouRide,
    kept,
    done,
  })
  const pages = Number(/Pages:\s+(\d+)\n/.exec(ask('pdfinfo', pdf))?.[1])
  expect(pages).toBeGreaterThan(2)
  const text = ask('pdftotext', pdf, '-')
  for (let i = 0; i < 24; i += 1)
    for (const what of ['Declined', 'Kept', 'Check']) expect(text).toContain(`${what} ${i} `)
  for (let i = 0; i < 6; i += 1) expect(text).toContain(`Caution ${i}`)
  expect(text.match(/\bword\b/g)).toHaveLength(700)
  expect(text.match(/\basked\b/g)).toHaveLength(91)
  expect(text).not.toContain('…')
  // pdftotext ends each page with a form feed.
  const page = (n: number) => text.split('\f')[n - 1] ?? ''
  for (let n = 2; n <= pages; n += 1) {
    expect(page(n)).toContain(`page ${n} of ${pages}`)
    expect(page(n)).toContain('J02, U01, 35 mm air fork, 150 mm. Quernfold Suspension Bench')
  }
  expect(page(1)).not.toContain('collected by')
  expect(page(pages)).toContain('collected by')
}, 30_000)

// Invented figures of an invented job.
const full: HandOverPage = {
  ...empty,
  shop: {
    ...shop,
    name: 'Quernfold Suspension Bench',
    address: 'Ardenmoss End, Quernfold Valley',
    phone: '0100 2000',
    terms: 'Come back free of charge within 60 days for oil at a wiper, a knock, or pressure that goes.',
  },
  rider: 'Mateus Corvalho-Wynd',
  riderKit: '82 kg with kit, standing',
  unit: 'U01, 35 mm air fork, 150 mm',
  serial: 'QF-0417',
  coil: false,
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
  drawing: { ...forkForTests(0), ring: 0.03 },
  found: [{ verdict: 'watch', what: 'drained, left leg', figure: '7 ml of 10 ml', source: 'measured-here' }],
  limits: 'limits: sheet Q35-150, revision C',
  done: [{ what: 'foot fastener, left leg', figure: '5.5 N·m', source: 'makers-sheet' }],
  hands: 'done by Sunniva Raghavold; 58 min of 60',
  beforeAfter: [{ what: 'friction, half the loop', before: '21 N', after: '14 N', source: 'measured-here' }],
  holdsAir: [{ what: 'P1, put on again after 24 h, showed', figure: '86 psi', source: 'measured-here' }],
  elsewhere: [{ what: 'at 1800 m and 8 °C your gauge shows', figure: '84 psi', source: 'worked-out' }],
  next: [{ what: 'Lower legs at 30 to 60 riding hours, 27 June to 18 July.', source: 'common-practice' }],
  beforeYouRide: ['Axle tight, wheel square in the fork.'],
  declined: ['You said no to it on 2 May: Air spring.'],
  kept: ['“Snapshot before change” was passed over by Odalys on 2 May, because: it came in flat'],
  cautions: ['Never fill above 140 psi.'],
  receivedBy: { name: 'M. C.-W.', time: '3 May' },
}

test('the full page prints every setting where it is set, and not one coloured dot', async () => {
  const pdf = await renderHandOverPage(full)
  const text = ask('pdftotext', pdf, '-layout', '-').replace(/\s+/g, ' ')
  for (const said of [
    ...['88 psi', '8 of 18', '10 ml left, 10 ml right', '46 mm²/s', '82 kg with kit', 'Holds its air', '→'],
    ...['Ardenmoss End', '0100 2000', 'serial QF-0417', 'You said no to it on 2 May', 'it came in flat', '84 psi'],
    ...[
      'within 60 days',
      'Rights that the law gives you',
      'limits: sheet Q35-150',
      '58 min of 60',
      'collected by: M. C.-W.',
    ],
  ])
    expect(text).toContain(said)
  expect(ask('pdfinfo', pdf)).toMatch(/Pages:\s+1\n/)
  // Drawn in colour by pdftoppm (PPM: three bytes a pixel): print is black, white and what lies between.
  const ppm = execFileSync('pdftoppm', ['-r', '60', '-'], { input: pdf, maxBuffer: 1e8 })
  const head = /^P6\s\d+\s\d+\s255\s/.exec(ppm.subarray(0, 40).toString('latin1'))
  const data = ppm.subarray(head?.[0].length ?? ppm.length)
  expect(data.length).toBeGreaterThan(1e6)
  let coloured = 0
  for (let i = 0; i < data.length; i += 3) if (data[i] !== data[i + 1] || data[i] !== data[i + 2]) coloured += 1
  expect(coloured).toBe(0)
})

interface PagePath {
  points: [number, number][]
  /** Of the page along and across, a millimetre of the drawing. */
  scale: [number, number]
}

/** Strokes as poppler's pdftocairo, a program outside the project, reads them off the page. */
function strokesOn(pdf: Uint8Array): PagePath[] {
  const svg = execFileSync('pdftocairo', ['-svg', '-', '-'], { input: pdf, maxBuffer: 1e8 }).toString()
  return [...svg.matchAll(/<path[^>]* d="([^"]+)" transform="matrix\(([^)]+)\)"\/>/g)].map(
    ([, d = '', matrix = '']) => {
      const [along = 0, , , across = 0] = matrix.split(',').map(Number)
      const points = [...d.matchAll(/[ML] (-?[\d.]+) (-?[\d.]+)/g)]
      return { points: points.map(([, x, y]): [number, number] => [Number(x), Number(y)]), scale: [along, across] }
    },
  )
}

test('the page draws the very shapes of the section, to one scale along and across', async () => {
  const drawn = strokesOn(await renderHandOverPage(full))
  const shapes = forkShapes({ ...forkForTests(0), ring: 0.03 })
  for (const name of ['casting.left', 'casting.right', 'cap.right', 'crown.web', 'arch', 'knob.rebound']) {
    const shape = shapes.find((one) => one.name === name)
    if (!shape) throw new Error(name)
    // In millimetres, as the drawing has it; half a tenth is poppler's rounding to its pixels.
    const outline = outlinesOf(shape, true).flat()
    const same = ([x, y]: readonly number[], [u, v]: readonly number[]) =>
      Math.abs((x ?? 0) - (u ?? 0)) < 0.05 && Math.abs((y ?? 0) - (v ?? 0)) < 0.05
    const found = drawn.find(({ points }) => outline.every((place, index) => same(points[index] ?? [], place)))
    expect(found, name).toBeDefined()
    expect(found?.scale[0], name).toBe(found?.scale[1])
  }
})

test('at home nobody hands over to anybody', async () => {
  const home = { ...full, shop: { ...full.shop, name: 'Odalys’s bench', terms: null, home: true } }
  const text = ask(
    'pdftotext',
    await renderHandOverPage({ ...home, declined: ['Left for another time: Air spring'] }),
    '-',
  )
  expect(text.match(/Left for another time/g)).toHaveLength(1)
  for (const said of ['Done by Odalys', 'done by Odalys, 3 May', 'Left for another time']) expect(text).toContain(said)
  for (const not of ['for the workshop', 'collected by', 'Handed over', 'free of charge'])
    expect(text).not.toContain(not)
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
