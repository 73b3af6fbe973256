import { say, type Unit } from '@legwork/trade'
import { dayAndYear } from '../figures/moment.ts'
import { useJobs, useRegisters } from '../offline/hooks.tsx'
import { LinkButton } from '../ui/button.tsx'
import { Row, SideHead, ValueRow } from '../ui/ledger.tsx'
import { ShopFrame } from './shop-frame.tsx'

export function UnitsPage() {
  const { units, riders } = useRegisters()
  return (
    <ShopFrame place="units" title={say('place.units')}>
      <h1>{say('place.units')}</h1>
      {units.length === 0 && <p className="empty">{say('units.empty')}</p>}
      {[...units]
        .sort((a, b) => a.label.localeCompare(b.label))
        .map((unit) => (
          <Row key={unit.id} href={`/units/${unit.id}`} className="list-row">
            <b translate="no">{unit.description}</b>
            <span translate="no">{riders.find(({ id }) => id === unit.rider)?.name}</span>
            <span translate="no">{unit.label}</span>
          </Row>
        ))}
    </ShopFrame>
  )
}

function UnitBook({ unit }: { unit: Unit }) {
  const { riders, sheets } = useRegisters()
  const jobs = useJobs().filter(({ state }) => state.opened?.unit === unit.id)
  const rider = riders.find(({ id }) => id === unit.rider)
  return (
    <>
      <h1 translate="no">{`${unit.label} ${unit.description}`}</h1>
      {rider && (
        <ValueRow name={say('unit.rider')}>
          <span translate="no">{rider.name}</span>
        </ValueRow>
      )}
      {unit.serial && (
        <ValueRow name={say('unit.serial')}>
          <span translate="no">{unit.serial}</span>
        </ValueRow>
      )}
      <Row href={`/sheets/${unit.sheet}`} className="list-row">
        <b>{say('unit.sheet')}</b>
        <span translate="no">{sheets.find(({ id }) => id === unit.sheet)?.name}</span>
      </Row>
      <SideHead title={say('unit.jobs')}>
        {jobs.length === 0 && <p className="book">{say('unit.no-jobs')}</p>}
        {jobs.map(({ stream, state }) => (
          <Row key={stream} href={`/jobs/${encodeURIComponent(stream)}`} className="list-row">
            <b translate="no">{state.opened && dayAndYear(state.opened.at)}</b>
            <span>{say(`job.state.${state.state}`)}</span>
          </Row>
        ))}
      </SideHead>
    </>
  )
}

export function UnitPage({ id }: { id: string }) {
  const unit = useRegisters().units.find((one) => one.id === id)
  return (
    <ShopFrame
      place="units"
      title={unit?.label ?? say('place.units')}
      actions={
        unit && (
          <LinkButton kind="main" arrow="forward" href={`/take-in?unit=${unit.id}`}>
            {say('unit.take-in')}
          </LinkButton>
        )
      }
    >
      {unit ? <UnitBook unit={unit} /> : <p className="empty">{say('unit.not-here')}</p>}
    </ShopFrame>
  )
}
