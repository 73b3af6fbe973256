/** The chamber that a pump is attached to while its hose is measured: one of a unit here, or one whose volume is known. */
import { assumedPlaces, type Id, type Sheet, say, type Unit } from '@legwork/trade'
import { useState } from 'react'
import { QuantityInput } from '../../figures/quantity-input.tsx'
import { QuantityText } from '../../figures/quantity-text.tsx'
import { useRegisters } from '../../offline/hooks.tsx'
import { Field } from '../../ui/field.tsx'
import { ValueRow } from '../../ui/ledger.tsx'
import { useAllSheets } from '../sheets/revisions.ts'

export interface Chamber {
  /** [m³]; null while it is not known. */
  volume: number | null
  unit: Id | null
}

/** Positive chamber at full length, where the leg rests short of the port [m³]; null where the sheet does not give it. */
function positiveVolume(sheet: Sheet | undefined, spacers: number): number | null {
  const { positiveVolume: whole, spacerVolume, chamberOil } = sheet?.spring ?? {}
  if (sheet?.springKind !== 'air' || !whole) return null
  const free = whole.value - spacers * (spacerVolume?.value ?? 0) - (chamberOil?.value ?? 0)
  return free > 0 ? free : null
}

export function useChamber() {
  const sheets = useAllSheets()
  const units = useRegisters().units.filter(({ kind }) => kind.endsWith('air'))
  const sheetOf = (unit: Unit | undefined): Sheet | undefined => sheets.findLast(({ id }) => id === unit?.sheet)
  const [unitId, setUnitId] = useState('')
  const [typed, setTyped] = useState<number | null>(null)
  const [count, setCount] = useState<number | null>(null)
  const offered = units.filter((unit) => positiveVolume(sheetOf(unit), 0) !== null)
  const unit = offered.find(({ id }) => id === unitId)
  const sheet = sheetOf(unit)
  const spacers = count ?? sheet?.spacers?.value ?? 0
  const chamber: Chamber = unit
    ? { volume: positiveVolume(sheet, spacers), unit: unit.id }
    : { volume: typed, unit: null }
  const pick = (id: string) => {
    setUnitId(id)
    setCount(null)
  }
  return { chamber, offered, unit, sheet, spacers, typed, pick, setTyped, setCount }
}

export function HoseChamber({ of }: { of: ReturnType<typeof useChamber> }) {
  const { chamber, offered, unit, sheet, spacers, typed, pick, setTyped, setCount } = of
  return (
    <>
      <Field label={say('hose.chamber')}>
        {(control) => (
          <select {...control} value={unit?.id ?? ''} onChange={(event) => pick(event.target.value)}>
            <option value="">{say('hose.chamber.other')}</option>
            {offered.map(({ id, label, description }) => (
              <option key={id} value={id} translate="no">
                {say('hose.chamber.unit', { label, description })}
              </option>
            ))}
          </select>
        )}
      </Field>
      {unit ? (
        <>
          {sheet?.spring.spacerVolume && (
            <QuantityInput label={say('hose.spacers')} kind="number" value={spacers} onChange={setCount} />
          )}
          <ValueRow
            name={say('hose.chamber.of', { n: spacers })}
            note={sheet && assumedPlaces(sheet).includes('spring.positiveVolume') && say('hose.chamber.assumed')}
          >
            <QuantityText value={chamber.volume} kind="volume" digits={1} />
          </ValueRow>
        </>
      ) : (
        <QuantityInput label={say('hose.chamber.volume')} kind="volume" digits={1} value={typed} onChange={setTyped} />
      )}
    </>
  )
}
