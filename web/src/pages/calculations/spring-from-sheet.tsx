/** A spring taken from a sheet of this workshop: nobody copies twelve numbers by hand that stand here already. */
import { Refusal, type Spring } from '@legwork/engine'
import { type Sheet, say, springOf } from '@legwork/trade'
import { useMemo } from 'react'
import { useRegisters } from '../../offline/hooks.tsx'
import { Field } from '../../ui/field.tsx'
import type { Path } from './draft.ts'
import { usePlace } from './form-state.tsx'

/** The spring of a sheet; null where it lacks a dimension. */
function springIn(sheet: Sheet): Spring | null {
  try {
    return springOf(sheet)
  } catch (trouble) {
    if (trouble instanceof Refusal) return null
    throw trouble
  }
}

/** A fork's place takes forks, a shock's shocks; any other takes both. */
function isFor({ kind }: Sheet, path: Path): boolean {
  if (path.includes('fork')) return kind.startsWith('fork')
  return !path.includes('shock') || kind.startsWith('shock')
}

/** `airOnly`: a coil is refused there. */
export function SpringFromSheet({ path, airOnly }: { path: Path; airOnly: boolean }) {
  const { sheets } = useRegisters()
  const { value, change } = usePlace(path)
  const offered = useMemo(
    () =>
      sheets
        .filter((sheet) => isFor(sheet, path) && !(airOnly && sheet.springKind === 'coil'))
        .flatMap((sheet) => {
          const spring = springIn(sheet)
          return spring ? [{ sheet, spring }] : []
        }),
    [sheets, path, airOnly],
  )
  if (offered.length === 0) return null
  const taken = offered.find(({ spring }) => JSON.stringify(spring) === JSON.stringify(value))
  return (
    <div className="calc-line">
      <Field label={say('calc.from-sheet')}>
        {(control) => (
          <select
            {...control}
            value={taken ? offered.indexOf(taken) : ''}
            onChange={(event) => {
              const chosen = offered[Number(event.target.value)]
              if (event.target.value !== '' && chosen) change(chosen.spring)
            }}
          >
            <option value="">{say('calc.from-sheet.choose')}</option>
            {offered.map(({ sheet }, index) => (
              <option key={`${sheet.id} ${sheet.revision}`} value={index}>
                {say('calc.from-sheet.one', { name: sheet.name, revision: sheet.revision })}
              </option>
            ))}
          </select>
        )}
      </Field>
    </div>
  )
}
