/** What is asked first of a unit: whose, which sheet, how much ridden since its bath oil, what is due when. */
import { type DueOfUnit, type Rider, type Sheet, say, type Unit } from '@legwork/trade'
import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { day } from '../../figures/moment.ts'
import { QuantityText } from '../../figures/quantity-text.tsx'
import { SourceMark } from '../../marks/source-mark.tsx'
import type { Ridden } from './life-of.ts'

function Fact({ name, children }: { name: ReactNode; children: ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  )
}

interface UnitFactsProps {
  unit: Unit
  rider: Rider | undefined
  sheet: Sheet | null
  /** The last service of the lower legs, ISO 8601 day; null where none was done here. */
  serviced: string | null
  since: Ridden | undefined
  /** What comes round on it, the soonest first. */
  dues: readonly DueOfUnit[]
}

export function UnitFacts({ unit, rider, sheet, serviced, since, dues }: UnitFactsProps) {
  return (
    <dl className="unit-facts">
      <Fact name={say('unit.rider')}>
        {rider ? (
          <Link href={`/riders/${rider.id}`} translate="no">
            {rider.name}
          </Link>
        ) : (
          say('unit.no-rider')
        )}
      </Fact>
      <Fact name={say('unit.sheet')}>
        <Link href={`/sheets/${unit.sheet}`} translate="no">
          {sheet && say('page.sheet-revision', { name: sheet.name, revision: sheet.revision })}
        </Link>
      </Fact>
      {unit.serial && (
        <Fact name={say('unit.serial')}>
          <span translate="no">{unit.serial}</span>
        </Fact>
      )}
      <Fact name={say('life.since')}>
        {since && rider?.hoursPerWeek ? (
          <>
            <QuantityText value={Math.round(since.hours) * 3600} kind="duration" measure="h" digits={0} size="row" />
            <small className="book">
              <SourceMark kind="rider-said" />{' '}
              {say('life.since.said', { hours: rider.hoursPerWeek, day: day(since.from) })}
            </small>
          </>
        ) : (
          <span className="book">
            {serviced ? say('life.since.no-hours', { day: day(serviced) }) : say('life.since.none')}
          </span>
        )}
      </Fact>
      {dues.map(
        ({ service, hours, due }) =>
          due && (
            <Fact key={service} name={say(`life.due.${service}`)}>
              <span className="figure-day" translate="no">
                {day(due.date)}
              </span>
              <small className="book">
                <SourceMark kind="common-practice" />{' '}
                {say('life.due.note', { early: day(due.early), late: day(due.late), ...hours })}
              </small>
            </Fact>
          ),
      )}
    </dl>
  )
}
