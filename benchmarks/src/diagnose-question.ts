/** Eight signs of an air fork, another eight each time, out of those a rider or the bench sees. */
import { type Diagnosis, diagnose, seededDraws } from '@legwork/engine'
import { faultNetwork } from '@legwork/trade/faults/fault-network.ts'

const kind = 'fork-air'
const chance = seededDraws(1988)
const seen = faultNetwork.signs.filter(({ kinds }) => kinds?.includes(kind) ?? true).map(({ id }) => id)

function eightSigns(): readonly string[] {
  const left = [...seen]
  return Array.from({ length: 8 }, () => left.splice(Math.floor(chance() * left.length), 1)[0] ?? '')
}

export const cases: readonly (readonly string[])[] = Array.from({ length: 16 }, eightSigns)

export function diagnosed(present: readonly string[]): Diagnosis {
  return diagnose(faultNetwork, { kind, present, absent: [] })
}

let next = 0

/** One number that hangs on every posterior and every next test. */
export function diagnoseSum(): number {
  const { posteriors, nextTests } = diagnosed(cases[next % cases.length] ?? [])
  next += 1
  const all = Object.values(posteriors).reduce((sum, posterior) => sum + posterior, 0)
  return nextTests.reduce((sum, { gainPerMinute }) => sum + gainPerMinute, all)
}

/** The part of the network an air fork has, for a program that knows nothing of kinds. */
export function networkOfKind() {
  const causes = faultNetwork.causes.filter(({ kinds }) => kinds?.includes(kind) ?? true)
  const ids = causes.map(({ id }) => id)
  const tests = faultNetwork.tests.filter(({ links }) => ids.some((id) => Object.hasOwn(links, id)))
  return {
    causes: ids,
    priors: causes.map(({ prior }) => prior),
    signs: Object.fromEntries(
      seen.map((id) => [
        id,
        {
          leak: faultNetwork.signs.find((sign) => sign.id === id)?.leak,
          links: causes.map(({ links }) => (Object.hasOwn(links, id) ? links[id] : 0)),
        },
      ]),
    ),
    tests: tests.map(({ id, minutes, falsePositive, links }) => ({
      id,
      minutes,
      leak: falsePositive,
      links: ids.map((cause) => (Object.hasOwn(links, cause) ? links[cause] : 0)),
      pairs: (faultNetwork.pairs ?? []).filter(({ test }) => test === id).map(({ sign }) => sign),
    })),
  }
}
