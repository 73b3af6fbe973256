/** What the sheet says per leg for this plan, each with its source; what it lacks is asked right there. */
import {
  legs,
  neededValues,
  placeOn,
  type Reading,
  type Sheet,
  type SourcedNumber,
  type SourcedText,
  say,
} from '@legwork/trade'
import { Fragment } from 'react'
import { SourceLine } from '../../../figures/source-line.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { Shown } from '../readings.tsx'
import { SheetFillIn } from '../sheet-fill-in.tsx'
import './plan.css'

type Sourced = SourcedNumber | SourcedText | null

function Value({ of, measure }: { of: Sourced; measure: Reading['measure'] }) {
  if (!of) return <b>{say('agree.missing')}</b>
  return typeof of.value === 'number' ? (
    <Shown value={of.value} measure={measure} size="row-small" />
  ) : (
    <span className="text-value" translate="no">
      {of.value}
    </span>
  )
}

/** Each source once: most sheets say all of it on one page. */
function Sources({ of }: { of: readonly Sourced[] }) {
  const sources = of.flatMap((one) => one?.source ?? [])
  const each = new Map(sources.map((source) => [JSON.stringify(source), source]))
  return [...each].map(([key, source]) => <SourceLine key={key} source={source} />)
}

function OnceRow({ name, of, measure }: { name: string; of: Sourced; measure: Reading['measure'] }) {
  return (
    <div className="sheet-value">
      <span className="name">{name}</span>
      <Value of={of} measure={measure} />
      <Sources of={[of]} />
    </div>
  )
}

const ofLegs = [
  ['agree.oil', 'bathOil', 'm³'],
  ['agree.torque', 'footTorque', 'N·m'],
  ['agree.washer', 'washer', 'count'],
] as const

/** Leg by leg, left and right beside each other. */
function LegValues({ sheet }: { sheet: Sheet }) {
  const of = sheet.legs
  if (!of) return null
  return (
    <table className="legs-values">
      <thead>
        <tr>
          <td />
          {legs.map((leg) => (
            <th key={leg} scope="col">
              {say(`leg.${leg}.title`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {ofLegs.map(([name, field, measure]) => (
          <Fragment key={field}>
            <tr>
              <th scope="row">{say(name)}</th>
              {legs.map((leg) => (
                <td key={leg}>
                  <Value of={of[leg][field]} measure={measure} />
                </td>
              ))}
            </tr>
            <tr className="sources">
              <td colSpan={1 + legs.length}>
                <Sources of={legs.map((leg) => of[leg][field])} />
              </td>
            </tr>
          </Fragment>
        ))}
      </tbody>
    </table>
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
      <LegValues sheet={sheet} />
      {services.includes('air-spring') && (
        <OnceRow name={say('value.cap-torque')} of={sheet.spring.capTorque ?? null} measure="N·m" />
      )}
      {sheet.springKind === 'air' && (sheet.maxPressure !== null || !frozen) && (
        <OnceRow name={say('agree.maximum')} of={sheet.maxPressure} measure="Pa" />
      )}
      {sheet.springKind === 'air' && !sheet.maxPressure && <p className="book">{say('agree.maximum.none')}</p>}
      {!frozen && fields.length > 0 && <SheetFillIn key={sheet.revision} sheet={sheet} fields={fields} />}
    </SideHead>
  )
}
