/** A person's word on a job: put aside and taken up, stopped, handed over to nobody yet. Seen on the job and on the Bench. */
import { expect, it } from 'vitest'
import { useBench } from './src/bench.ts'
import { enterDemo } from './src/walk.ts'

const bench = useBench()

/** A ruled group of the Bench. */
const group = (title: string) =>
  bench.page.locator('section').filter({ has: bench.page.getByRole('heading', { name: title, exact: true }) })

it('a job is put aside for a part, taken up again, stopped and lifted', async () => {
  const { page, address } = bench
  await enterDemo(page, address)
  const row = page.getByRole('link', { name: /U09/ })
  const waits = group('Waits').getByRole('link', { name: /U09/ })
  const job = `${address}${await row.first().getAttribute('href')}`
  await page.goto(`${job}/book`)
  await page.getByText('Put it aside').click()
  await page.getByText('a part', { exact: true }).click()
  await page.getByLabel('What for, in a few words').fill('foot washer, 10 mm')
  await page.getByLabel('Until').fill('2026-06-05')
  await page.getByRole('button', { name: 'Put it aside' }).click()
  await page.getByText('waits for a part, since 3 June; 5 June at the latest').waitFor()
  await page.goto(address)
  await waits.waitFor()
  expect(await waits.innerText()).toContain('waits for a part')

  await page.goto(`${job}/book`)
  await page.getByRole('button', { name: 'Go on with it' }).click()
  await page.getByText('Under way', { exact: true }).waitFor()
  await page.goto(address)
  await row.first().waitFor()
  expect(await waits.count()).toBe(0)

  await page.goto(`${job}/book`)
  await page.getByText('Stop it').click()
  await page.getByLabel('Why').fill('the left stanchion is scratched')
  await page.getByRole('button', { name: 'Stop it' }).click()
  const stop = page.getByRole('region', { name: 'Stopped' })
  await stop.waitFor()
  expect(await stop.innerText()).toContain('the left stanchion is scratched')
})

it('what is not proved is not ready to collect; what is, stands on the Bench to collect', async () => {
  const { page, address } = bench
  await page.goto(address)
  await page.getByRole('link', { name: /U06/ }).first().waitFor()
  const href = async (label: RegExp) =>
    (await page.getByRole('link', { name: label }).first().getAttribute('href')) ?? ''
  const [working, finished] = [await href(/U06/), await href(/U01/)]
  expect(await group('To collect').innerText()).toContain('U01')
  await page.goto(`${address}${finished}/hand-over`)
  await page.getByText('Ready to collect since 2 June 2026.').waitFor()
  expect(await page.getByRole('button', { name: 'Ready to collect' }).count()).toBe(0)
  await page.goto(`${address}${working}/hand-over`)
  await page.getByRole('button', { name: 'Ready to collect' }).click()
  await page.getByRole('alert').filter({ hasText: /./ }).first().waitFor()
  await page.goto(address)
  expect(await group('To collect').innerText()).not.toContain('U06')
})
