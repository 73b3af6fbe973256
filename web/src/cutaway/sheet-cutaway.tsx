/** A sheet's fork in section: what its dimensions draw, with no job and no rider. */
import { drawnOtherwise, forkAt, forkTableOf, isDrawable } from '@legwork/drawing'
import { prepareSpring, standardAir } from '@legwork/engine'
import { type Sheet, say, springOf } from '@legwork/trade'
import { useMemo, useState } from 'react'
import { QuantityInput } from '../figures/quantity-input.tsx'
import { LiveCutaway } from './live-cutaway.tsx'

const largest = 2e6

function Section({ sheet }: { sheet: Sheet }) {
  const [stroke, setStroke] = useState(0)
  const [pressure, setPressure] = useState<number | null>(null)
  const tooMuch = (value: number) => (value < 0 || value > largest ? say('cutaway.pressure-range') : null)
  const filled = pressure !== null && tooMuch(pressure) === null ? pressure : 0
  const spring = useMemo(() => springOf(sheet), [sheet])
  const table = useMemo(() => forkTableOf(sheet, spring), [sheet, spring])
  const prepared = useMemo(() => prepareSpring(spring, filled, { ambient: standardAir(0).ambient }), [spring, filled])
  if (!table) return null
  return (
    <section className="sheet-cutaway" aria-label={say('cutaway.section')}>
      <LiveCutaway
        fork={forkAt(table, prepared, stroke)}
        fullStroke={prepared.fullStroke}
        onStroke={setStroke}
        otherwise={drawnOtherwise(sheet)}
      />
      <QuantityInput
        label={say('cutaway.filled')}
        hint={say('cutaway.filled.hint')}
        kind="pressure"
        value={pressure}
        onChange={setPressure}
        judge={tooMuch}
      />
    </section>
  )
}

/** A word where its kind has no drawing; nothing where the sheet lacks a dimension that the drawing stands on. */
export function SheetCutaway({ sheet }: { sheet: Sheet }) {
  if (sheet.kind !== 'fork-air') return <p className="book">{say('cutaway.none')}</p>
  if (!isDrawable(sheet) || !sheet.lowerVolume) return null
  return <Section sheet={sheet} />
}
