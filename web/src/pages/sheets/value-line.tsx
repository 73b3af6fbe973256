/** One value of a sheet: what it is, the figure, where it comes from, and the way to change it. */
import type { MeasureName } from '@legwork/engine'
import { type HeldValue, type SheetPlace, say, sayMessage, usualBeside } from '@legwork/trade'
import { QuantityText } from '../../figures/quantity-text.tsx'
import { measureFor } from '../../figures/shown.ts'
import { SourceLine } from '../../figures/source-line.tsx'
import { useMeasures } from '../../figures/world.tsx'
import { choiceWord, digitsOf } from '../../sheet-form/place-field.tsx'
import { Button } from '../../ui/button.tsx'

function Held({ place, held }: { place: SheetPlace; held: HeldValue }) {
  const person = useMeasures()
  const { holds } = place
  if (holds === 'text') return <span translate="no">{held.value}</span>
  if ('oneOf' in holds) return <span>{choiceWord(holds.words, String(held.value))}</span>
  const measure: MeasureName | null = measureFor(holds.kind, person)
  const value = Number(held.value)
  return <QuantityText value={value} kind={holds.kind} digits={digitsOf(value, measure)} />
}

export function ValueLine({ place, onChange }: { place: SheetPlace; onChange: (() => void) | null }) {
  const { held, usual } = place
  const what = sayMessage(place.label)
  return (
    <div className="row sheet-line">
      <div className="name">
        <span className="what">{what}</span>
        {held?.source && <SourceLine source={held.source} />}
        {held && !held.source && <p className="book">{say('sheet.no-source')}</p>}
        {!held && usual && <p className="book">{sayMessage(usualBeside(usual))}</p>}
      </div>
      <div className="value">
        {held ? <Held place={place} held={held} /> : <span className="book">{say('sheet.asked-for')}</span>}
      </div>
      {onChange && (
        <Button kind="second" size="row" name={say('sheet.change.of', { what })} onPress={onChange}>
          {say('sheet.change')}
        </Button>
      )}
    </div>
  )
}
