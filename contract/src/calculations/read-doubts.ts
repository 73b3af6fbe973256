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

/** What may stand where a doubt was written. */
function allowedFor({ freedom, shape, ends }: Written): string {
  if (freedom !== undefined) return 'u of 0 or more with whole degrees of freedom from 3 to 10000: readings less one'
  if (shape !== undefined) return `from low to high with the value between, shape one of ${shapes.join(', ')}`
  if (ends !== undefined) return 'from low to high with the value between, ends above 0, at most half of that way'
  return 'a quantity with u of 0 or more, or from low to high with the value between; shared by name'
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
  const ends = differences(one, question, (doubt) => doubt.ends)
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
      ends: ends(path),
      shared: inCommon,
    })
    if (worked) return { path, name, doubt: worked }
    const came = JSON.stringify(at(question, path)) ?? 'missing'
    return refuse(`input.${name}`, 'wrong-form', came, allowedFor(doubt), 'Give the doubt in the same measure.')
  })
}

interface Figures {
  readonly value: unknown
  readonly u: number | null
  readonly low: unknown
  readonly high: unknown
  readonly ends: number | null
  readonly shared: Readonly<Record<string, number | null>>
}

const shapes = ['rectangular', 'triangular', 'arcsine'] as const

/** Without the shared errors; null where something does not fit. */
function ownOf(written: Written, { value, u, low, high, ends }: Figures): Doubtful | null {
  if (typeof value !== 'number') return null
  if (written.u !== undefined) {
    if (u === null || !(u >= 0 && Number.isFinite(u))) return null
    const { freedom } = written
    if (freedom === undefined) return { value, u }
    const fits = typeof freedom === 'number' && Number.isInteger(freedom) && freedom >= 3 && freedom <= 10_000
    return fits ? { value, u, freedom } : null
  }
  if (written.low === undefined) return { value }
  if (typeof low !== 'number' || typeof high !== 'number' || !(low <= value && value <= high)) return null
  if (written.ends !== undefined) {
    return ends !== null && ends > 0 && ends <= (high - low) / 2 ? { value, low, high, ends } : null
  }
  const shape = shapes.find((one) => one === (written.shape ?? 'rectangular'))
  return shape ? { value, low, high, shape } : null
}

function doubtful(written: Written, figures: Figures): Doubtful | null {
  const own = ownOf(written, figures)
  if (own === null || written.shared === undefined) return own
  const { shared } = figures
  if (Object.keys(shared).length === 0) return null
  const common: Record<string, number> = {}
  for (const [name, by] of Object.entries(shared)) {
    if (by === null || !Number.isFinite(by)) return null
    common[name] = by
  }
  return { ...own, shared: common }
}
