/** Opens worked-out figures and asks the API the very question that their panel names. */
import type { Locator, Page } from 'playwright-core'
import { differences } from './shown-answers.ts'

/** Marks of a worked-out number that nothing opens, by the text beside them. */
async function unopened(page: Page): Promise<string[]> {
  return page
    .locator('main')
    .evaluateAll((pages) =>
      pages.flatMap((main) =>
        [...main.querySelectorAll('.source-mark[data-source="worked-out"]')]
          .filter((mark) => mark.closest('[data-worked-out]') === null)
          .map((mark) => mark.parentElement?.textContent?.trim() ?? ''),
      ),
    )
}

interface Panel {
  /** Of the link that repeats the calculation. */
  href: string
  path: string
  times: number
  /** What the figure on the page says, and what the panel says of it. */
  figure: { text: string; unit: string }
  inside: { text: string; unit: string }
  inputs: number
}

/** A quantity as it is written, number and unit apart; from a trigger, the one in it or the one it stands under. */
const writtenIn = (place: Locator): Promise<{ text: string; unit: string }> =>
  place.evaluate((found) => {
    const around = found.closest('.figure, .fig') ?? found
    const quantity = found.matches('.quantity')
      ? found
      : (found.querySelector('.quantity') ?? around.querySelector('.quantity'))
    const unit = quantity?.querySelector('u')?.textContent?.trim() ?? ''
    return { text: quantity?.firstChild?.textContent?.trim() ?? '', unit }
  })

async function opened(page: Page, trigger: Locator): Promise<Panel> {
  const figure = await writtenIn(trigger)
  await trigger.click()
  const panel = page.getByRole('dialog').locator('.workings')
  await panel.waitFor()
  const found: Panel = {
    href: (await panel.getByRole('link').last().getAttribute('href')) ?? '',
    path: (await panel.getAttribute('data-path')) ?? '',
    times: Number(await panel.getAttribute('data-times')),
    figure,
    inside: await writtenIn(panel.locator('.answer .quantity')),
    inputs: await panel.locator('dl > div').count(),
  }
  await page.getByRole('button', { name: 'Close', exact: true }).click()
  await page.getByRole('dialog').waitFor({ state: 'hidden' })
  return found
}

/** The number at a path of an answer, e.g. `points[9].force`. */
function numberAt(answer: unknown, path: string): number {
  let here = answer
  for (const [, index, name = ''] of path.matchAll(/\[(\d+)\]|([^.[\]]+)/g))
    here = here !== null && typeof here === 'object' ? Reflect.get(here, index ?? name) : undefined
  return Number(here)
}

/** One figure opened and asked again: sentences of what does not agree, none where everything does. */
async function disagreements(page: Page, address: string, trigger: Locator): Promise<string[]> {
  const { href, path, times, figure, inside, inputs } = await opened(page, trigger)
  const { pathname, searchParams } = new URL(href, address)
  const name = pathname.replace('/calculations/', '')
  const says = `${figure.text} ${figure.unit}, ${name} ${path}`
  const answer = await fetch(`${address}/api/calc/${name}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: searchParams.get('input') ?? '',
  })
  if (!answer.ok) return [`${says}: ${answer.status} ${await answer.text()}`]
  const output: { units?: Record<string, string> } = await answer.json()
  const unit = output.units?.[path.replace(/\[\d+\]/g, '[]')] ?? ''
  const expected = { value: numberAt(output, path) * times, units: { value: unit } }
  return [
    ...(inputs === 0 ? [`${says}: the panel names no input`] : []),
    ...differences({ value: figure }, expected).map((one) => `${says} on the page: ${one}`),
    ...differences({ value: inside }, expected).map((one) => `${says} in the panel: ${one}`),
  ]
}

/** Every worked-out figure of a page, opened one after the other; of a long table of them the first `most`. */
export async function checkFigures(page: Page, address: string, most = 60): Promise<{ seen: number; wrong: string[] }> {
  const triggers = page.locator('[data-worked-out]:visible')
  const wrong: string[] = (await unopened(page)).map((text) => `nothing opens “${text}”`)
  const seen = Math.min(most, await triggers.count())
  for (let index = 0; index < seen; index++) wrong.push(...(await disagreements(page, address, triggers.nth(index))))
  return { seen, wrong }
}
