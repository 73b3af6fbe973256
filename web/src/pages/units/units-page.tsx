import { type DueOfUnit, dueOfUnit, type JobState, say, type Unit } from '@legwork/trade'
import type { ReactNode } from 'react'
import { UnitProfile } from '../../cutaway/unit-profile.tsx'
import { day } from '../../figures/moment.ts'
import { useJobs, useNewestSheet, useRegisters } from '../../offline/hooks.tsx'
import { LinkButton } from '../../ui/button.tsx'
import { Row } from '../../ui/ledger.tsx'
import { benchGroupOf } from '../bench-groups.ts'
import { ShopFrame } from '../shop-frame.tsx'
import './units.css'

/** Where it is now, or when it was last here. */
function whereItIs(jobs: readonly { state: JobState }[]): string {
  const last = jobs
    .map(({ state }) => state)
    .toSorted((one, other) => (one.opened?.at ?? '').localeCompare(other.opened?.at ?? ''))
    .at(-1)
  if (!last) return say('unit.never-here')
  const group = last.stopped ? null : benchGroupOf(last.state)
  if (group) return say(`bench.${group}`)
  if (last.state !== 'handed-over') return say(`job.state.${last.state}`)
  return say('unit.last-here', { day: day(last.handedOver?.at ?? last.opened?.at ?? '') })
}

interface UnitRowProps {
  unit: Unit
  /** What comes round on it first. */
  due?: DueOfUnit | undefined
  /** Under its name. */
  note?: ReactNode
  jobs: readonly { state: JobState }[]
}

export function UnitRow({ unit, due, note, jobs }: UnitRowProps) {
  const sheet = useNewestSheet(unit.sheet)
  return (
    <Row href={`/units/${unit.id}`} className="unit-row">
      <div className="profile">
        {sheet && (
          <UnitProfile
            of={{
              kind: unit.kind,
              body: sheet.body,
              stanchion: sheet.stanchion?.value ?? null,
              stroke: sheet.stroke.value,
            }}
          />
        )}
      </div>
      <b translate="no">{unit.label}</b>
      <div>
        <span translate="no">{unit.description}</span>
        {note && <small className="book">{note}</small>}
      </div>
      <span className="book">
        {whereItIs(jobs.filter(({ state }) => state.opened?.unit === unit.id))}
        {due?.due && <small>{say(`unit.due.${due.service}`, { day: day(due.due.date) })}</small>}
      </span>
    </Row>
  )
}

export function UnitsPage() {
  const { units, riders } = useRegisters()
  const jobs = useJobs()
  const riderOf = ({ rider }: Unit) => riders.find(({ id }) => id === rider) ?? { hoursPerWeek: null, mass: null }
  const nameOf = (rider: string | null) => riders.find(({ id }) => id === rider)?.name
  return (
    <ShopFrame
      place="units"
      title={say('place.units')}
      actions={
        units.length === 0 && (
          <LinkButton kind="main" href="/take-in" arrow="forward">
            {say('bench.take-in')}
          </LinkButton>
        )
      }
    >
      <h1 className="ruled">{say('place.units')}</h1>
      {units.length === 0 && <p className="empty">{say('units.empty')}</p>}
      {units.map((unit) => (
        <UnitRow
          key={unit.id}
          unit={unit}
          due={dueOfUnit(jobs, unit.id, riderOf(unit))[0]}
          note={nameOf(unit.rider) ? <span translate="no">{nameOf(unit.rider)}</span> : say('unit.no-rider')}
          jobs={jobs}
        />
      ))}
    </ShopFrame>
  )
}
