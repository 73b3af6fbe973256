/** The doubts of a question in SI: each figure is read by the calculation's own schema, in the question's place. */
import { type Doubtful, Refusal } from '@legwork/engine'
import { type Calculation, refusedFields } from './calculation.ts'
import { at, doubtsIn, plain, type Step, sharedOf, textOf, type Written, zeroOf } from './doubtful-input.ts'

export interface DoubtedField {
  readonly path: readonly Step[]
  /** The path as it is written: `spring.lower.legs[0].oil`. */
  readonly name: string
  readonly doubt: Doubtful
}

const mostFields = 200
const mostShared = 20

export function refuse(field: string, code: string, came: string, allowed: string, next: string): never {
  throw new Refusal([{ field, code, came, allowed, next }])
}

/** The same refusals, seen from outside `input`. */
export function inside<T>(work: () => T): T {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    throw new Refusal(error.errors.map((one) => ({ ...one, field: `input.${one.field}` })))
  }
}

function read(one: Calculation, question: unknown): unknown {
  const checked = one.input.safeParse(question)
  if (checked.success) return checked.data
  return inside(() => {
    throw new Refusal(refusedFields(checked.error, question))
  })
}

/** The question as the calculation takes it, every doubt at its value. */
export function questionOf(one: Calculation, question: unknown): unknown {
  return read(
    one,
    plain(question, (doubt) => doubt.value),
  )
}

/** A standard uncertainty in SI at each path: what the field reads, less what 0 in the same measure reads. */
function differences(one: Calculation, question: unknown, pick: (doubt: Written) => unknown) {
  const there = read(
    one,
    plain(question, (doubt) => pick(doubt) ?? doubt.value),
  )
  const zero = read(
    one,
    plain(question, (doubt) => {
      const written = pick(doubt)
      return written === undefined ? doubt.value : zeroOf(written)
    }),
  )
  return (path: readonly Step[]): number | null => {
    const [far, near] = [at(there, path), at(zero, path)]
    return typeof far === 'number' && typeof near === 'number' ? far - near : null
  }
}

function namesOf(written: readonly Written[]): string[] {
  const names = [...new Set(written.flatMap((doubt) => Object.keys(sharedOf(doubt))))]
  const fields = written.map(({ path }) => textOf(path))
  if (names.length > mostShared) {
    const came = `${names.length} names`
    refuse('input', 'wrong-count', came, `at most ${mostShared} shared errors`, 'Leave out those that hardly matter.')
  }
  for (const name of names) {
    if (name.trim() !== '' && name.length <= 60 && !fields.includes(name)) continue
    const allowed = 'a name of 1 to 60 letters that no doubtful field has'
    refuse(
      'input',
      'does-not-fit',
      JSON.stringify(name),
      allowed,
      'Name the error by what it comes from, like "pump 3".',
    )
  }
  return names
}

/**
 * Each doubt of a question with its figures in SI, by path.
 *
 * @throws Refusal where a figure can't be read in its field's place, or does not fit its value
 */
export function readDoubts(one: Calculation, question: unknown): DoubtedField[] {
  const written = doubtsIn(question)
  if (written.length === 0 || written.length > mostFields) {
    const came = `${written.length} doubtful fields`
    const allowed = `1 to ${mostFields} fields as {value, u}, {value, low, high} or either with shared`
    refuse('input', 'wrong-count', came, allowed, 'Give the doubt of at least one field.')
  }
  const names = namesOf(written)
  const value = questionOf(one, question)
  const u = differences(one, question, (doubt) => doubt.u)
  const shared = names.map((name) => [name, differences(one, question, (doubt) => sharedOf(doubt)[name])] as const)
  const low = read(
    one,
    plain(question, (doubt) => doubt.low ?? doubt.value),
  )
  const high = read(
    one,
    plain(question, (doubt) => doubt.high ?? doubt.value),
  )
  return written.map((doubt) => {
    const { path } = doubt
    const name = textOf(path)
    const common = sharedOf(doubt)
    const inCommon: Record<string, number | null> = Object.fromEntries(
      shared.filter(([error]) => Object.hasOwn(common, error)).map(([error, of]) => [error, of(path)]),
    )
    const worked = doubtful(doubt, {
      value: at(value, path),
      u: u(path),
      low: at(low, path),
      high: at(high, path),
      shared: inCommon,
    })
    if (worked) return { path, name, doubt: worked }
    const allowed = 'a quantity with u of 0 or more, or from low to high with the value between; shared by name'
    const came = JSON.stringify(at(question, path)) ?? 'missing'
    return refuse(`input.${name}`, 'wrong-form', came, allowed, 'Give the doubt in the same measure.')
  })
}

function doubtful(
  written: Written,
  read: { value: unknown; u: number | null; low: unknown; high: unknown; shared: Record<string, number | null> },
): Doubtful | null {
  const { value, u, low, high, shared } = read
  if (typeof value !== 'number') return null
  if (written.shared !== undefined && Object.keys(shared).length === 0) return null
  const common: Record<string, number> = {}
  for (const [name, by] of Object.entries(shared)) {
    if (by === null || !Number.isFinite(by)) return null
    common[name] = by
  }
  const also = written.shared === undefined ? {} : { shared: common }
  if (written.u !== undefined) return u !== null && u >= 0 && Number.isFinite(u) ? { value, u, ...also } : null
  if (written.low === undefined) return { value, ...also }
  if (typeof low !== 'number' || typeof high !== 'number') return null
  return low <= value && value <= high ? { value, low, high, ...also } : null
}
