import { execFileSync } from 'node:child_process'
import { mkdtemp, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { renderNotice } from './notice.ts'

const shop = { name: 'W', address: 'A 1', phone: null, terms: null, home: false }

// Read by poppler, a program outside the project.
test.each([1, 40])('the notice with %i findings names them all and says it was not rebuilt', async (count) => {
  const found = Array.from({ length: count }, (_, i) => `${i}: ${'the crown moves on the stanchion '.repeat(8)}`)
  const pdf = await renderNotice({
    shop,
    job: 'J10',
    date: '4 May',
    unit: 'U11',
    serial: null,
    rider: null,
    found,
    photos: [],
    by: 'O. F.',
  })
  const read = (program: string, ...rest: string[]) => execFileSync(program, ['-', ...rest], { input: pdf }).toString()
  const pages = Number(/Pages:\s+(\d+)\n/.exec(read('pdfinfo'))?.[1])
  expect(pages === 1).toBe(count === 1)
  const text = read('pdftotext', '-')
  for (let i = 0; i < count; i += 1) expect(text).toContain(`${i}: the crown moves`)
  const last = read('pdftotext', '-f', String(pages), '-')
  for (const said of ['was not rebuilt', 'serious injury', 'read and understood']) expect(last).toContain(said)
  if (pages > 1) expect(last).toContain(`page ${pages} of ${pages}`)
  for (const font of read('pdffonts').trim().split('\n').slice(2)) expect(font).toMatch(/\byes\s+yes\s+yes\b/)
})

// A grey JPEG of 8 × 6 px as ImageMagick 6.9 writes it.
const pixel = Buffer.from(
  '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1xeXBkeFxlZ2P/wAALCAAGAAgBAREA/8QAFAABAAAAAAAAAAAAAAAAAAAAAf/EABQQAQAAAAAAAAAAAAAAAAAAAAD/2gAIAQEAAD8AH//Z',
  'base64',
)

test.each([
  { given: [pixel], printed: 1, more: null },
  { given: [pixel, pixel, null], printed: 2, more: '1 photo more' },
  { given: [pixel, pixel, pixel, pixel, pixel], printed: 3, more: '2 photos more' },
  { given: [null], printed: 0, more: '1 photo more' },
])('prints $printed of its photos and says of the others where they are', async ({ given, printed, more }) => {
  const found = Array.from({ length: 40 }, (_, i) => `${i}: ${'the crown moves on the stanchion '.repeat(8)}`)
  const pdf = await renderNotice({
    shop,
    job: 'J10',
    date: '4 May',
    unit: 'U11',
    serial: null,
    rider: null,
    found,
    photos: given,
    by: 'O. F.',
  })
  const folder = await mkdtemp(join(tmpdir(), 'legwork-notice-'))
  const file = join(folder, 'notice.pdf')
  await writeFile(file, pdf)
  const read = (program: string, ...rest: string[]) => execFileSync(program, rest).toString()
  expect(read('pdfimages', '-list', file).trim().split('\n').slice(2)).toHaveLength(printed)
  const text = read('pdftotext', file, '-')
  expect(text).toContain('was not rebuilt')
  if (more) expect(text).toContain(more)
})
