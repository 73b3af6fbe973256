/** What the sheet says per leg for this plan, each with its source; what it lacks is asked right there. */
import {
  type Leg,
  legs,
  neededValues,
  placeOn,
  type Sheet,
  type SourcedNumber,
  type SourcedText,
  say,
} from '@legwork/trade'
import type { ReactNode } from 'react'
import { SourceLine } from '../../figures/source-line.tsx'
import { SideHead } from '../../ui/ledger.tsx'
import { Shown } from './readings.tsx'
import { SheetFillIn } from './sheet-fill-in.tsx'
import './plan.css'

function ValueCell({
  name,
  of,
  children,
}: {
  name: string
  of: SourcedNumber | SourcedText | null
  children: ReactNode
}) {
  return (
    <div className="sheet-value">
      <span className="name">{name}</span>
      {of ? children : <b>{say('agree.missing')}</b>}
      {of && <SourceLine source={of.source} />}
    </div>
  )
}

function LegValues({ sheet, leg }: { sheet: Sheet; leg: Leg }) {
  const of = sheet.legs?.[leg]
  if (!of) return null
  return (
    <section className="leg-values" aria-label={say(`leg.${leg}.title`)}>
      <h3>{say(`leg.${leg}.title`)}</h3>
      <ValueCell name={say('agree.oil')} of={of.bathOil}>
        {of.bathOil && <Shown value={of.bathOil.value} measure="m³" size="row-small" />}
      </ValueCell>
      <ValueCell name={say('agree.torque')} of={of.footTorque}>
        {of.footTorque && <Shown value={of.footTorque.value} measure="N·m" size="row-small" />}
      </ValueCell>
      <ValueCell name={say('agree.washer')} of={of.washer}>
        <span className="text-value" translate="no">
          {of.washer?.value}
        </span>
      </ValueCell>
    </section>
  )
}

/** The values of the services picked; with gaps, a form to fill them in. */
export function SheetValues({
  sheet,
  services,
  frozen,
}: {
  sheet: Sheet
  services: readonly string[]
  frozen: boolean
}) {
  const gaps = neededValues(services, sheet).filter((value) => !value.good)
  const fields = gaps.flatMap((gap) => placeOn(sheet, gap.field) ?? [])
  return (
    <SideHead
      place="above"
      title={say('agree.values')}
      note={<span translate="no">{say('page.sheet-revision', { name: sheet.name, revision: sheet.revision })}</span>}
    >
      {sheet.generic && <p className="book">{say('sheet.generic')}</p>}
      <div className="legs-values">
        {legs.map((leg) => (
          <LegValues key={leg} sheet={sheet} leg={leg} />
        ))}
      </div>
      <ValueCell name={say('agree.maximum')} of={sheet.maxPressure}>
        {sheet.maxPressure && <Shown value={sheet.maxPressure.value} measure="Pa" size="row-small" />}
      </ValueCell>
      {!sheet.maxPressure && <p className="book">{say('agree.maximum.none')}</p>}
      {!frozen && fields.length > 0 && <SheetFillIn key={sheet.revision} sheet={sheet} fields={fields} />}
    </SideHead>
  )
}
