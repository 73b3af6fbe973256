/** Limits on a sheet from outside: of a measurement that is known, in order, at least one of them. */
import { figure } from '@legwork/engine'
import { benchLimits, isJudgeable, judgeables } from '../limits/bench-limits.ts'
import { checkSource } from './check-source.ts'
import type { FieldCheck } from './field-check.ts'

const bounds = ['failBelow', 'watchBelow', 'watch', 'fail'] as const
/** Larger than any reading of its kind [SI]. */
const largest = 1e6

export function checkLimits(check: FieldCheck, value: unknown): void {
  for (const [what, one] of Object.entries(check.fields(value, 'limits', null) ?? {})) {
    const field = `limits.${what}`
    if (!isJudgeable(what)) {
      check.refuse(
        field,
        'unknown-field',
        one,
        judgeables.join(', '),
        'Take it out, or name the measurement as listed.',
      )
      continue
    }
    const found = check.fields(one, field, [...bounds, 'source'])
    if (!found) continue
    checkSource(check, found.source, `${field}.source`)
    const given = bounds.filter((name) => found[name] !== undefined)
    if (given.length === 0)
      check.refuse(`${field}.fail`, 'limit-missing', undefined, `at least one of ${bounds.join(', ')}`)
    const { kind } = benchLimits[what]
    let before: { name: string; value: number } | null = null
    for (const name of given) {
      const limit = check.number(found[name], `${field}.${name}`, 0, largest, kind)
      if (limit !== null && before && limit < before.value)
        check.refuse(
          `${field}.${name}`,
          'limit-order',
          limit,
          `no less than ${before.name} (${figure(before.value, kind)})`,
        )
      if (limit !== null) before = { name, value: limit }
    }
  }
}
