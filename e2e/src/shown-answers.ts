/** Reads the numbers off a calculation's page and lays them beside an answer of the API. */
import { type MeasureName, measures, toSI } from '@legwork/engine'
import type { Page } from 'playwright-core'

interface Shown {
  /** As written: `28.30 to 31.72`. */
  text: string
  unit: string
}

/** Presses the button and waits for an answer. */
export async function workOut(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Work it out' }).click()
  await page.locator('[data-answered="now"]').waitFor({ timeout: 60_000 })
}

/** Every number on the page by its path in the answer. */
export async function shownAnswers(page: Page): Promise<Record<string, Shown>> {
  return page.evaluate(() => {
    const shown: Record<string, { text: string; unit: string }> = {}
    const read = (path: string, place: Element, unit: string | null) => {
      const copy = place.cloneNode(true)
      if (!(copy instanceof Element)) return
      const own = copy.querySelector('u')?.textContent?.trim() ?? unit ?? ''
      for (const mark of copy.querySelectorAll('u')) mark.remove()
      const text = copy.textContent?.trim() ?? ''
      if (/\d/.test(text)) shown[path] = { text, unit: own }
    }
    for (const line of document.querySelectorAll('[data-answer]')) {
      const value = line.querySelector(':scope > dd, :scope .calc-main')
      if (value) read(line.getAttribute('data-answer') ?? '', value, null)
    }
    for (const cell of document.querySelectorAll('td[data-cell]')) {
      const index = [...(cell.parentElement?.children ?? [])].indexOf(cell)
      const head = cell.closest('table')?.querySelectorAll('th')[index]?.querySelector('small')
      read(cell.getAttribute('data-cell') ?? '', cell, head?.textContent ?? null)
    }
    return shown
  })
}

const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹'

/** Numbers of a text with the size of their last digit. */
function numbersIn(text: string): { value: number; last: number }[] {
  const plain = text
    .replace(/\u2009/g, '')
    .replace(/−/g, '-')
    .replace(
      /·10([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)/g,
      (_, power: string) => `e${[...power].map((sign) => (sign === '⁻' ? '-' : raised.indexOf(sign))).join('')}`,
    )
  return [...plain.matchAll(/-?\d+(?:\.(\d+))?(?:e(-?\d+))?/g)].map(([written, decimals = '', power = '0']) => ({
    value: Number(written),
    last: 10 ** (Number(power) - decimals.length),
  }))
}

const otherUnits: Readonly<Record<string, number>> = { 'mm²': 1e-6 }

/** A shown number in the unit of the answer; `told` is what the API says of it. */
function inAnswer(value: number, unit: string, told: unknown): number {
  const other = otherUnits[unit]
  if (other !== undefined) return value * other
  // Hours are the one quantity of the contract that is not SI.
  if (unit === told) return value
  // Object.keys widens the names of a constant table to string.
  const names = Object.keys(measures) as MeasureName[]
  const measure = names.find((name) => measures[name].label === unit && !name.endsWith('difference'))
  return measure ? toSI(value, measure) : value
}

function named(owner: unknown, name: string): unknown {
  return owner !== null && typeof owner === 'object' ? Reflect.get(owner, name) : undefined
}

/** A name may itself be a path, as the shares of `doubt` are named: the whole rest is tried first. */
function at(answer: unknown, path: string): unknown {
  if (path === '') return answer
  const whole = named(answer, path)
  if (whole !== undefined) return whole
  const step = /^\.?(?:\[(\d+)\]|([^.[\]]+))/.exec(path)
  if (!step) return undefined
  const [taken, index, name = ''] = step
  const inner = named(answer, index ?? name)
  return inner === undefined ? undefined : at(inner, path.slice(taken.length).replace(/^\./, ''))
}

/** What the answer has where a line of the page stands. */
function expectedAt(answer: unknown, path: string): unknown[] {
  if (!path.endsWith('low-high')) {
    const value = at(answer, path)
    return Array.isArray(value) ? value : [value]
  }
  const owner = path.slice(0, -'low-high'.length)
  return [at(answer, `${owner}low`), at(answer, `${owner}high`)]
}

/** Every line that does not show the answer's number to its last digit; a text with digits in it must be the text. */
export function differences(shown: Record<string, Shown>, answer: Record<string, unknown>): string[] {
  const units: unknown = answer.units
  return Object.entries(shown).flatMap(([path, { text, unit }]) => {
    const expected = expectedAt(answer, path)
    if (expected.every((one) => typeof one === 'string')) return []
    const known = path.replace(/\[\d+\]/g, '[]')
    const told = named(units, known) ?? named(units, `${known}[]`)
    const numbers = numbersIn(text)
    const isSame =
      numbers.length === expected.length &&
      numbers.every(({ value, last }, index) => {
        const wanted = Number(expected[index])
        const [si, next] = [inAnswer(value, unit, told), inAnswer(value + last, unit, told)]
        return Math.abs(si - wanted) <= Math.abs(next - si) * 0.51 + 1e-12 * Math.abs(wanted)
      })
    return isSame ? [] : [`${path}: ${text} ${unit} instead of ${expected.join(', ')}`]
  })
}
