/** Inputs with doubt: where they stand in a question, and the plain question without them. */

export type Step = string | number

/** A doubt as it is written, and where. */
export interface Written {
  readonly path: readonly Step[]
  readonly value: unknown
  readonly u?: unknown
  /** Degrees of freedom of u. */
  readonly freedom?: unknown
  readonly low?: unknown
  readonly high?: unknown
  /** How what lies between both is spread. */
  readonly shape?: unknown
  /** How far both are themselves in doubt. */
  readonly ends?: unknown
  /** Standard uncertainty by the name of an error that other fields share. */
  readonly shared?: unknown
}

const own = [['u'], ['u', 'freedom'], ['low', 'high'], ['low', 'high', 'shape'], ['low', 'high', 'ends']]
const nameOf = (fields: readonly string[]) => [...fields, 'value'].sort().join()
const forms = new Set([...own, ['shared'], ...own.map((fields) => [...fields, 'shared'])].map(nameOf))

/** Whether an object says how doubtful a value is. */
export function isDoubt(value: object): value is Omit<Written, 'path'> {
  return forms.has(Object.keys(value).sort().join())
}

/** The shared errors of a doubt by their names. */
export function sharedOf({ shared }: Written): Record<string, unknown> {
  // A list or a text has no names of errors; `null` neither.
  return shared !== null && typeof shared === 'object' && !Array.isArray(shared)
    ? (shared as Record<string, unknown>) // an object, by the tests before it
    : {}
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
