/** Every page of the demo workshop, by name: for tests and pictures of all of them. */
import type { Page } from 'playwright-core'

export const chapters = ['take-in', 'look-over', 'plan', 'work', 'prove', 'set-up', 'hand-over', 'book'] as const

/** The page must stand on the demo's Bench. */
export async function addressesOf(page: Page, address: string): Promise<[name: string, address: string][]> {
  const href = async (name: RegExp): Promise<string> =>
    (await page.getByRole('link', { name }).first().getAttribute('href')) ?? ''
  const [working, finished, stopped] = [await href(/U09/), await href(/U01/), await href(/U05/)]
  const firstIn = async (place: string): Promise<string> => {
    await page.goto(`${address}/${place}`)
    const link = page.locator(`main a.row[href^="/${place}/"]`).first()
    await link.waitFor()
    return (await link.getAttribute('href')) ?? ''
  }
  const [unit, sheet, calculation] = [await firstIn('units'), await firstIn('sheets'), await firstIn('calculations')]
  const [rider, instrument] = [await firstIn('riders'), await firstIn('instruments')]
  return [
    ['bench', `${address}/`],
    ...chapters.map((chapter): [string, string] => {
      // What is proved and handed over is seen on a job that has come so far.
      const job = chapter === 'prove' || chapter === 'hand-over' ? finished : working
      return [chapter, `${address}${job}/${chapter}`]
    }),
    ['prove-to-come', `${address}${working}/prove`],
    ['set-up-written', `${address}${finished}/set-up`],
    ['hand-over-to-come', `${address}${working}/hand-over`],
    ['press', `${address}${working}/prove?test=press`],
    ['pressed', `${address}${finished}/prove?test=press`],
    ['return', `${address}${working}/prove?test=return`],
    ['stopped', `${address}${stopped}/look-over`],
    ['take-in-a-unit', `${address}/take-in`],
    ['units', `${address}/units`],
    ['unit', `${address}${unit}`],
    ['riders', `${address}/riders`],
    ['rider', `${address}${rider}`],
    ['sheets', `${address}/sheets`],
    ['sheet', `${address}${sheet}`],
    ['sheet-read-in', `${address}/sheets/read-in`],
    ['instruments', `${address}/instruments`],
    ['instrument', `${address}${instrument}`],
    ['instrument-new', `${address}/instruments/new`],
    ['calculations', `${address}/calculations`],
    ['calculation', `${address}${calculation}`],
    ['search', `${address}/search`],
    ['hands', `${address}/hands`],
    ['station', `${address}/station`],
  ]
}
