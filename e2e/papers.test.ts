/** The head of the papers is written once, and they are printed with it; a page that is printed carries no ground. */
import { execFileSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import { useBench } from './src/bench.ts'

describe('papers', () => {
  const bench = useBench()
  it('carry the workshop’s name, address, phone and terms as they were written on the station’s page', async () => {
    const { page, address } = bench
    await page.goto(address)
    await page.getByRole('button', { name: /demo workshop/i }).click()
    await page.getByRole('link', { name: /U01/ }).first().waitFor()
    const job = await page.getByRole('link', { name: /U01/ }).first().getAttribute('href')
    await page.goto(`${address}/station`)
    const field = (name: string) => page.getByRole('textbox', { name })
    await field('Name').fill('Bench at the ford')
    await field('Address').fill('Ardenmoss End, Quernfold Valley')
    await field('Phone').fill('0100 2000')
    await field('What you stand in for').fill('Oil at a wiper comes back free of charge within 60 days.')
    await page.getByRole('button', { name: 'Keep it' }).click()
    await page.getByText('Papers printed from now on carry it.').waitFor()
    await page.goto(`${address}${job}/hand-over`)
    const href = await page.getByRole('link', { name: 'Hand-over page (PDF)' }).getAttribute('href')
    const pdf = Buffer.from(await (await fetch(`${address}${href}`)).arrayBuffer())
    // Read by poppler, a program outside the project.
    const said = execFileSync('pdftotext', ['-', '-'], { input: pdf }).toString().replace(/\s+/g, ' ')
    for (const part of ['Bench at the ford', 'Ardenmoss End, Quernfold Valley', '0100 2000', 'within 60 days'])
      expect(said).toContain(part)
  })
})
