import { type Found, refuse, stopAt, within } from '../refusal/found.ts'

/** By id, the chance that one brings the other. */
export type Links = Readonly<Record<string, number>>

export interface FaultSign {
  readonly id: string
  /** Kinds of units it can be seen on; left out: every kind. */
  readonly kinds?: readonly string[]
  /** Chance of seeing it though none of the causes is there. */
  readonly leak: number
}

export interface FaultCause {
  readonly id: string
  readonly kinds?: readonly string[]
  /** Causes that one thing known beforehand makes likelier together. */
  readonly group?: string
  /** Chance that it is there before anything is seen. */
  readonly prior: number
  /** By sign. */
  readonly links: Links
  /** Somebody may be hurt: its tests come first. */
  readonly safety?: boolean
}

export interface FaultTest {
  readonly id: string
  readonly minutes: number
  /** Chance of a positive reading though none of the causes is there. */
  readonly falsePositive: number
  /** By cause. */
  readonly links: Links
}

/** A sign and a test that are nearly one observation: of both, the test counts. */
export interface FaultPair {
  readonly sign: string
  readonly test: string
}

export interface FaultNetwork {
  readonly signs: readonly FaultSign[]
  readonly causes: readonly FaultCause[]
  readonly tests: readonly FaultTest[]
  readonly pairs?: readonly FaultPair[]
}

const most = 200
const inNetwork = 'network.'

function chanceWithin(found: Found, field: string, chance: number): Found {
  return within(found, '', field, chance, 'number', 0, 1, 'Give a chance from 0 to 1.')
}

function linksWithin(found: Found, at: string, links: Links, known: ReadonlySet<string>, what: string): Found {
  let all = found
  for (const [id, chance] of Object.entries(links)) {
    const field = `${at}links.${id}`
    if (known.has(id)) all = chanceWithin(all, field, chance)
    else all = refuse(all, field, 'not-a-choice', id, `the id of a ${what}`, `Add the ${what} or take the link out.`)
  }
  return all
}

function idsWithin(found: Found, list: 'signs' | 'causes' | 'tests', ids: readonly string[], seen: Set<string>): Found {
  let all = found
  if (ids.length > most) {
    all = refuse(
      all,
      inNetwork + list,
      'wrong-count',
      `${ids.length} ${list}`,
      `at most ${most} ${list}`,
      'Split the network.',
    )
  }
  ids.forEach((id, index) => {
    if (seen.has(id))
      all = refuse(all, `${inNetwork}${list}[${index}].id`, 'does-not-fit', id, 'an id of its own', 'Rename it.')
    seen.add(id)
  })
  return all
}

/**
 * Refuses a network that is none: ids given twice, links to nothing, chances outside 0 … 1, more than 200 of a sort.
 *
 * @throws Refusal naming every field that can't be
 */
export function stopAtNetwork(network: FaultNetwork): void {
  const { signs, causes, tests, pairs = [] } = network
  const seen = new Set<string>()
  const signIds = new Set(signs.map(({ id }) => id))
  const causeIds = new Set(causes.map(({ id }) => id))
  const testIds = new Set(tests.map(({ id }) => id))
  let found: Found = null
  for (const list of ['signs', 'causes', 'tests'] as const) {
    found = idsWithin(
      found,
      list,
      network[list].map(({ id }) => id),
      seen,
    )
  }
  signs.forEach(({ leak }, index) => {
    found = chanceWithin(found, `${inNetwork}signs[${index}].leak`, leak)
  })
  causes.forEach(({ prior, links }, index) => {
    found = chanceWithin(found, `${inNetwork}causes[${index}].prior`, prior)
    found = linksWithin(found, `${inNetwork}causes[${index}].`, links, signIds, 'sign')
  })
  tests.forEach(({ minutes, falsePositive, links }, index) => {
    const at = `${inNetwork}tests[${index}].`
    found = within(found, at, 'minutes', minutes, 'number', 0.1, 10_000, 'Give the minutes it takes.')
    found = chanceWithin(found, `${at}falsePositive`, falsePositive)
    found = linksWithin(found, at, links, causeIds, 'cause')
  })
  pairs.forEach(({ sign, test }, index) => {
    const next = 'Name a sign and a test of the network.'
    if (!signIds.has(sign))
      found = refuse(found, `${inNetwork}pairs[${index}].sign`, 'not-a-choice', sign, 'the id of a sign', next)
    if (!testIds.has(test))
      found = refuse(found, `${inNetwork}pairs[${index}].test`, 'not-a-choice', test, 'the id of a test', next)
  })
  stopAt(found?.slice(0, 20) ?? null)
}
