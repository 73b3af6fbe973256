import { execFileSync } from 'node:child_process'
import { expect, test } from 'vitest'
import { renderNotice } from './notice.ts'

// Read by poppler, a program outside the project.
test.each([1, 40])('the notice with %i findings is one page and says it was not rebuilt', async (count) => {
  const found = Array.from({ length: count }, (_, i) => `${i}: ${'the crown moves on the stanchion '.repeat(8)}`)
  const pdf = await renderNotice({
    workshop: 'W',
    job: 'J10',
    date: '4 May',
    unit: 'U11',
    rider: null,
    found,
    by: 'O. F.',
  })
  const read = (program: string, ...rest: string[]) => execFileSync(program, ['-', ...rest], { input: pdf }).toString()
  expect(read('pdfinfo')).toMatch(/Pages:\s+1\n/)
  expect(read('pdftotext', '-')).toContain('was not rebuilt')
  expect(read('pdftotext', '-').includes('more in the book')).toBe(count === 40)
})
