/** Reads what a picture is drawn from, and asks the registry for what it shows beside the answer. */
import { runCalculation } from '@legwork/contract/calculations/index.ts'
import { isRecord, valueAt } from '../draft.ts'

/** The number at a path; `otherwise` where there is none. */
export function numberAt(value: unknown, path: readonly (string | number)[], otherwise = 0): number {
  const found = valueAt(value, [...path])
  return typeof found === 'number' ? found : otherwise
}

/** The rows of a list that are objects. */
export function rowsAt(value: unknown, name: string): Record<string, unknown>[] {
  const list = valueAt(value, [name])
  return Array.isArray(list) ? list.filter(isRecord) : []
}

/** What another calculation, or this one at another place, answers; null where it refuses. */
export function answerTo(name: string, input: Record<string, unknown>): Record<string, unknown> | null {
  const answer = runCalculation(name, input)
  return answer.ok ? answer.output : null
}
