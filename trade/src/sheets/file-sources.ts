/** Sources in a sheet's file: under short names or in place, with names of people and instruments instead of ids. */
import type { Id } from '../journal/entry.ts'
import { commonPractice } from '../limits/bench-limits.ts'
import { say } from '../words/words.ts'
import { checkSource } from './check-source.ts'
import { cameAs, FieldCheck, type FieldProblem } from './field-check.ts'
import type { Source } from './sheet.ts'

export type Loose = Readonly<Record<string, unknown>>
export const isLoose = (value: unknown): value is Loose =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** Ids for the names in a file. */
export interface SourceNames {
  person: (name: string) => Id | null
  instrument: (name: string) => Id | null
  /** What was measured by people who are not of this workshop counts as a handbook's value, not as measured here. */
  elsewhere?: boolean
}

const blank = { document: null, revision: null, page: null, person: null, at: null, instrument: null }

/** Stands in for a source that was refused already, so that it is refused once. */
const refusedSource: Source = commonPractice

function measuredElsewhere(source: Loose): Source {
  const at = typeof source.at === 'string' ? source.at.slice(0, 10) : '–'
  const document = say('sheet.measured-elsewhere', { person: String(source.person), day: at })
  return { ...commonPractice, kind: 'handbook', document }
}

/** One source of the file as the book has it. */
function sourceOf(value: unknown, field: string, names: SourceNames, problems: FieldProblem[]): Source {
  if (!isLoose(value)) {
    const allowed = 'an object with kind, and document, revision, page, person, at, instrument where they are known'
    problems.push({ field, code: 'sheet.not-an-object', came: cameAs(value), allowed, next: 'Correct it in the file.' })
    return refusedSource
  }
  const whole: Record<string, unknown> = { ...blank, ...value }
  const check = new FieldCheck()
  checkSource(check, whole, field)
  const strangers = (['person', 'instrument'] as const).filter((name) => {
    const said = whole[name]
    if (typeof said !== 'string' || said.trim() === '') return false
    const found = names[name](said)
    if (found) whole[name] = found
    return !found
  })
  if (check.problems.length > 0) {
    problems.push(...check.problems.map((problem) => ({ ...problem, next: 'Correct it in the file.' })))
    return refusedSource
  }
  if (strangers.length > 0 && names.elsewhere) return measuredElsewhere(value)
  for (const name of strangers)
    problems.push({
      field: `${field}.${name}`,
      code: 'sheet.source-stranger',
      came: cameAs(whole[name]),
      allowed: name === 'person' ? 'somebody of this workshop' : 'an instrument of this workshop',
      next: 'If it was measured in another workshop, read the file in as measured elsewhere.',
    })
  // Its kind was checked above.
  return strangers.length > 0 ? refusedSource : (whole as unknown as Source)
}

/**
 * The values of a file with their sources in place.
 *
 * @param sources   the file's own table of sources
 * @param problems  takes what is wrong with them, each once
 */
export function resolveSources(values: Loose, sources: unknown, names: SourceNames, problems: FieldProblem[]): Loose {
  if (sources !== undefined && !isLoose(sources))
    problems.push({
      field: 'sources',
      code: 'sheet.not-an-object',
      came: cameAs(sources),
      allowed: 'an object: a short name for each source',
      next: 'Correct it in the file.',
    })
  const table = new Map<string, Source>()
  for (const [name, source] of Object.entries(isLoose(sources) ? sources : {}))
    table.set(name, sourceOf(source, `sources.${name}`, names, problems))
  const placed = (said: unknown, field: string): Source => {
    if (typeof said !== 'string') return sourceOf(said, field, names, problems)
    const found = table.get(said)
    if (found) return found
    const allowed = [...table.keys()].join(', ') || 'a source in place: there is no table of sources'
    problems.push({ field, code: 'sheet.source-unknown', came: cameAs(said), allowed, next: 'Correct it in the file.' })
    return refusedSource
  }
  const walk = (value: unknown, path: string): unknown => {
    if (!isLoose(value)) return value
    const entries = Object.entries(value).map(([name, inside]) => {
      const field = path ? `${path}.${name}` : name
      return [name, name === 'source' && path ? placed(inside, field) : walk(inside, field)] as const
    })
    return Object.fromEntries(entries)
  }
  return walk(values, '') as Loose // an object goes in, an object comes out
}
