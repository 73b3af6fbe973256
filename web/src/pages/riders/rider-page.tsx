import { type Bike, type Rider, say } from '@legwork/trade'
import type { ReactNode } from 'react'
import { dayAndYear } from '../../figures/moment.ts'
import { QuantityText } from '../../figures/quantity-text.tsx'
import { SourceMark } from '../../marks/source-mark.tsx'
import { useJobs, useRegisters } from '../../offline/hooks.tsx'
import { SideHead, ValueRow } from '../../ui/ledger.tsx'
import { postureText } from '../job/posture.ts'
import { ShopFrame } from '../shop-frame.tsx'
import { UnitRow } from '../units/units-page.tsx'
import { EraseRider } from './erase-rider.tsx'

/** What the rider said of themselves: the mark says that nobody measured it. */
function Said({ name, children }: { name: ReactNode; children: ReactNode }) {
  return (
    <ValueRow
      name={
        <>
          <SourceMark kind="rider-said" /> {name}
        </>
      }
    >
      {children}
    </ValueRow>
  )
}

function BikeRows({ bike }: { bike: Bike }) {
  return (
    <SideHead title={<span translate="no">{bike.name}</span>} place="above">
      {bike.headAngle !== null && (
        <ValueRow name={say('take-in.bike.head-angle')}>
          <QuantityText value={bike.headAngle} kind="angle" digits={1} hand />
        </ValueRow>
      )}
      {bike.frontMass !== null && (
        <ValueRow name={say('take-in.bike.front-mass')}>
          <QuantityText value={bike.frontMass} kind="mass" digits={1} hand />
        </ValueRow>
      )}
      {bike.leverage !== null && (
        <ValueRow name={say('rider.leverage')}>
          <QuantityText value={bike.leverage} kind="number" digits={2} hand />
        </ValueRow>
      )}
    </SideHead>
  )
}

function RiderBook({ rider }: { rider: Rider }) {
  const { units, bikes } = useRegisters()
  const jobs = useJobs()
  const theirs = units.filter((unit) => unit.rider === rider.id)
  return (
    <>
      <h1 className="ruled" translate="no">
        {rider.name}
      </h1>
      <div className="rider-columns">
        <SideHead title={say('rider.says')} place="above">
          {rider.mass !== null && (
            <Said name={say('take-in.rider.mass')}>
              <QuantityText value={rider.mass} kind="mass" digits={1} hand />
            </Said>
          )}
          {rider.posture && (
            <Said name={say('take-in.rider.posture')}>
              <span translate="no">{postureText(rider.posture)}</span>
            </Said>
          )}
          {rider.frontShare !== null && (
            <ValueRow
              name={
                <>
                  <SourceMark kind="common-practice" /> {say('take-in.rider.share')}
                </>
              }
            >
              <QuantityText value={rider.frontShare} kind="fraction" digits={0} hand />
            </ValueRow>
          )}
          {rider.hoursPerWeek !== null && (
            <Said name={say('take-in.rider.hours')}>
              <QuantityText value={rider.hoursPerWeek * 3600} kind="duration" measure="h" digits={1} hand />
            </Said>
          )}
          {rider.contact && (
            <ValueRow name={say('rider.contact')}>
              <span translate="no">{rider.contact}</span>
            </ValueRow>
          )}
          <p className="book rider-note">{say('rider.changes')}</p>
        </SideHead>
        {bikes
          .filter((bike) => bike.rider === rider.id)
          .map((bike) => (
            <BikeRows key={bike.id} bike={bike} />
          ))}
      </div>
      <SideHead title={say('place.units')} place="above">
        {theirs.length === 0 && <p className="book">{say('rider.no-units')}</p>}
        {theirs.map((unit) => (
          <UnitRow key={unit.id} unit={unit} jobs={jobs} />
        ))}
      </SideHead>
      <EraseRider rider={rider} />
    </>
  )
}

export function RiderPage({ id }: { id: string }) {
  const rider = useRegisters().riders.find((one) => one.id === id)
  return (
    <ShopFrame place="riders" title={rider?.name ?? say('place.riders')}>
      {rider && !rider.removedOn && <RiderBook rider={rider} />}
      {rider?.removedOn && <p className="empty">{say('rider.removed', { day: dayAndYear(rider.removedOn) })}</p>}
      {!rider && <p className="empty">{say('rider.not-here')}</p>}
    </ShopFrame>
  )
}
