/** Inputs with doubt: where they stand in a question, and the plain question without them. */
import type { Doubtful } from '@legwork/engine'

export type Step = string | number

interface Written {
  readonly path: readonly Step[]
  readonly value: unknown
  readonly u?: unknown
  readonly low?: unknown
  readonly high?: unknown
}

function isDoubt(value: object): value is { value: unknown; u?: unknown; low?: unknown; high?: unknown } {
  const keys = Object.keys(value).sort().join()
  return keys === 'u,value' || keys === 'high,low,value'
}

/** Every `{value, u}` and `{value, low, high}` of a question. */
export function doubtsIn(value: unknown, path: readonly Step[] = []): Written[] {
  if (value === null || typeof value !== 'object') return []
  if (isDoubt(value)) return [{ path, ...value }]
  if (Array.isArray(value)) return value.flatMap((inner, index) => doubtsIn(inner, [...path, index]))
  return Object.entries(value).flatMap(([key, inner]) => doubtsIn(inner, [...path, key]))
}

/** The question with each doubt replaced by one of its figures. */
export function plain(value: unknown, pick: (doubt: Written) => unknown, path: readonly Step[] = []): unknown {
  if (value === null || typeof value !== 'object') return value
  if (isDoubt(value)) return pick({ path, ...value })
  if (Array.isArray(value)) return value.map((inner, index) => plain(inner, pick, [...path, index]))
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, plain(inner, pick, [...path, key])]))
}

export function textOf(path: readonly Step[]): string {
  return path.reduce<string>((all, step) => {
    if (typeof step === 'number') return `${all}[${step}]`
    return all === '' ? step : `${all}.${step}`
  }, '')
}

export function stepsOf(text: string): Step[] {
  return [...text.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, index, name = '']) =>
    index === undefined ? name : Number(index),
  )
}

export function at(value: unknown, path: readonly Step[]): unknown {
  let here = value
  for (const step of path) {
    if (here === null || typeof here !== 'object' || !Object.hasOwn(here, step)) return undefined
    here = Reflect.get(here, step)
  }
  return here
}

/** 0 in the measure of a text, so that a temperature's u is a difference; 0 for a plain number. */
export function zeroOf(written: unknown): unknown {
  return typeof written === 'string' ? written.replace(/^\s*[−+-]?[\d.,/]+/, '0') : 0
}

/** Figures in SI of a doubt, read in four plain questions. */
export function doubtful(
  written: Written,
  read: { value: unknown; u: unknown; zero: unknown; low: unknown; high: unknown },
): Doubtful | null {
  const { value, u, zero, low, high } = read
  if (typeof value !== 'number') return null
  if (written.u !== undefined)
    return typeof u === 'number' && typeof zero === 'number' && u >= zero ? { value, u: u - zero } : null
  return typeof low === 'number' && typeof high === 'number' && low <= high ? { value, low, high } : null
}
