import { dueOfUnit, say, type Unit } from '@legwork/trade'
import { UnitProfile } from '../../cutaway/unit-profile.tsx'
import { useJobs, useNewestSheet, useNow, useRegisters, useStation } from '../../offline/hooks.tsx'
import { LinkButton } from '../../ui/button.tsx'
import { SideHead } from '../../ui/ledger.tsx'
import { ShopFrame } from '../shop-frame.tsx'
import { LifeLine } from './life-line.tsx'
import { lifeOf, riddenBetween } from './life-of.ts'
import { UnitFacts } from './unit-facts.tsx'
import { UnitJobs } from './unit-jobs.tsx'
import './units.css'

function UnitBook({ unit }: { unit: Unit }) {
  const { riders } = useRegisters()
  const { memory } = useStation().store
  const now = Date.parse(useNow())
  const jobs = useJobs({ unit: unit.id })
  const life = lifeOf(jobs)
  const rider = riders.find(({ id }) => id === unit.rider)
  const sheet = useNewestSheet(unit.sheet)
  const hoursPerWeek = rider?.hoursPerWeek ?? null
  const ridden = riddenBetween(life, hoursPerWeek, now)
  const serviced = life.visits.findLast(({ services }) => services.includes('lower-legs'))?.until ?? null
  const from = serviced === null ? null : new Date(serviced).toISOString().slice(0, 10)
  const dues = dueOfUnit(jobs, unit.id, { hoursPerWeek, mass: rider?.mass ?? null })
  const due = dues.find(({ service }) => service === 'lower-legs')?.due ?? null
  const numberOf = (stream: (typeof life.visits)[number]['stream']) => memory.jobNumber(stream)
  return (
    <>
      <div className="unit-head">
        <h1 translate="no">{`${unit.label} ${unit.description}`}</h1>
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
      <UnitFacts {...{ unit, rider, sheet, serviced: from, since: ridden.at(-1), dues }} />
      {life.visits.length > 0 && (
        <SideHead title={say('life.title')} note={say('life.keys')} place="above">
          <LifeLine
            {...{ life, ridden, due, riders, now, numberOf }}
            label={say('life.spoken', {
              label: unit.label,
              jobs: life.visits.length,
              services: life.visits.flatMap(({ services }) => services).length,
              readings: life.visits.flatMap(({ readings }) => readings).length,
            })}
          />
        </SideHead>
      )}
      <SideHead title={say('unit.jobs')} place="above">
        {life.visits.length === 0 && <p className="book">{say('unit.no-jobs')}</p>}
        <UnitJobs
          visits={life.visits}
          states={new Map(jobs.map(({ stream, state }) => [stream, state]))}
          numberOf={numberOf}
          textOf={(digest) => (digest ? (memory.texts.get(digest)?.text ?? null) : null)}
        />
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
