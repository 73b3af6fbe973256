/** What every field of one form needs: the draft, a way to change it, and what was refused. */
import type { RefusedField } from '@legwork/engine'
import { say } from '@legwork/trade'
import { createContext, type ReactNode, useContext } from 'react'
import { type Path, pathText, valueAt } from './draft.ts'

export interface FormState {
  calc: string
  draft: unknown
  change: (path: Path, value: unknown) => void
  refusals: readonly RefusedField[]
  /** Quantities may carry a doubt. */
  withDoubt?: boolean
}

const Form = createContext<FormState | null>(null)

export function FormProvider({ state, children }: { state: FormState; children: ReactNode }) {
  return <Form value={state}>{children}</Form>
}

export function useForm(): FormState {
  const state = useContext(Form)
  if (!state) throw new Error('A field of a calculation stands outside its form')
  return state
}

/** What one refusal says beside its field. */
export function refusalText({ code, came, allowed, next }: RefusedField): string {
  if (code !== 'missing') return say('calc.refused.field', { came, allowed, next })
  return allowed === '' ? say('calc.needed') : say('calc.refused.missing', { allowed })
}

/** Value, way to change it and refusal of one place of the form. */
export function usePlace(path: Path): { value: unknown; change: (value: unknown) => void; refusal: string | null } {
  const { draft, change, refusals } = useForm()
  const name = pathText(path)
  const refused = refusals.find(({ field }) => field === name)
  return {
    value: valueAt(draft, path),
    change: (value) => change(path, value),
    refusal: refused ? refusalText(refused) : null,
  }
}

/** Whether anything in this part of the form was refused. */
export function isRefusedWithin(refusals: readonly RefusedField[], path: Path): boolean {
  const name = pathText(path)
  return refusals.some(({ field }) => field === name || field.startsWith(`${name}.`) || field.startsWith(`${name}[`))
}
