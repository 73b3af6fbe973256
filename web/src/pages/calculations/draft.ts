/** What stands in a form: the calculation's input itself, with quantities as texts with their measure. */
export type Step = string | number
export type Path = readonly Step[]

/** As refusals name a field: `spring.lower.legs[0].oil`. */
export function pathText(path: Path): string {
  return path.reduce<string>((all, step) => {
    if (typeof step === 'number') return `${all}[${step}]`
    return all === '' ? step : `${all}.${step}`
  }, '')
}

export function valueAt(value: unknown, path: Path): unknown {
  let here = value
  for (const step of path) {
    if (here === null || typeof here !== 'object' || !Object.hasOwn(here, step)) return undefined
    here = Reflect.get(here, step)
  }
  return here
}

/**
 * The same with one place changed; `undefined` takes a field out, and leaves an empty place in a list.
 *
 * @example withValue({ a: 1 }, ['b'], 2) // { a: 1, b: 2 }
 */
export function withValue(value: unknown, path: Path, next: unknown): unknown {
  const [step, ...rest] = path
  if (step === undefined) return next
  const inner = withValue(valueAt(value, [step]), rest, next)
  if (typeof step === 'number') {
    const list = Array.isArray(value) ? [...value] : []
    list[step] = inner ?? ''
    return list
  }
  const { [step]: _before, ...others } = isRecord(value) ? value : {}
  if (inner === undefined) return others
  // A field that is there keeps its place, so that an address stays the same for the same input.
  return isRecord(value) && Object.hasOwn(value, step) ? { ...value, [step]: inner } : { ...others, [step]: inner }
}

export function isRecord(value: unknown): value is Record<string, unknown> {
  return value !== null && typeof value === 'object' && !Array.isArray(value)
}

/** The input as it is sent: a field emptied by hand is not there. */
export function inputOf(draft: unknown): unknown {
  if (Array.isArray(draft)) return draft.map(inputOf)
  if (!isRecord(draft)) return draft
  const kept = Object.entries(draft).filter(([, value]) => value !== '')
  return Object.fromEntries(kept.map(([name, value]) => [name, inputOf(value)]))
}
