/** Take in a unit: find it or start it, the rider, the bike, what is asked for; then the job is open. */
import { type Rider, say, type Unit } from '@legwork/trade'
import { useState } from 'react'
import { useLocation, useSearch } from 'wouter'
import { useHands, useHome, useRegisters, useStation } from '../../offline/hooks.tsx'
import { Button } from '../../ui/button.tsx'
import { chapterHref } from '../job/job-address.ts'
import { ShopFrame } from '../shop-frame.tsx'
import { lacksOf, openJob } from './open-job.ts'
import { RiderPart } from './rider-part.tsx'
import {
  type BikeDraft,
  bikeDraftOf,
  blankRider,
  blankUnit,
  blankVisit,
  type NewUnit,
  type RiderDraft,
  riderDraftOf,
  type VisitDraft,
} from './take-in-draft.ts'
import { UnitPart } from './unit-part.tsx'
import { BikePart, VisitPart } from './visit-part.tsx'
import '../job/job.css'
import './take-in.css'

/** What the address brings: a unit (from its label or its page), and the visit that this is a further job of. */
function useBrought() {
  const registers = useRegisters()
  const asked = new URLSearchParams(useSearch())
  return {
    unit: registers.units.find(({ id }) => id === asked.get('unit')) ?? null,
    visit: registers.visits.find(({ id }) => id === asked.get('visit')) ?? null,
  }
}

type Brought = ReturnType<typeof useBrought>

/** Filled in anew where what the address brings comes later than the page: a station that is still being filled. */
export function TakeInPage() {
  const brought = useBrought()
  return <TakeIn key={`${brought.unit?.id} ${brought.visit?.id}`} brought={brought} />
}

function TakeIn({ brought }: { brought: Brought }) {
  const station = useStation()
  const { person } = useHands()
  const registers = useRegisters()
  const [, go] = useLocation()
  const home = useHome()
  const riderById = (id: string | null | undefined): Rider | undefined =>
    registers.riders.find((one) => one.id === (id ?? null))
  const bikeById = (id: string | null | undefined) => registers.bikes.find((one) => one.id === (id ?? null))
  /** At home the first rider is the person; a rider of the visit stays its rider. */
  const firstRider = (): RiderDraft => {
    const known = riderById(brought.visit?.rider ?? brought.unit?.rider) ?? (home ? registers.riders[0] : undefined)
    if (known) return riderDraftOf(known)
    return home && person
      ? { ...blankRider, name: person.name }
      : { ...blankRider, way: brought.visit ? 'none' : 'new' }
  }
  const [known, setKnown] = useState<Unit | null>(brought.unit)
  /** Undefined until somebody chose: an empty book begins with a new unit. */
  const [chosen, setMade] = useState<NewUnit | null | undefined>(undefined)
  const made = chosen === undefined && registers.units.length === 0 ? blankUnit : (chosen ?? null)
  const [rider, setRider] = useState<RiderDraft>(firstRider)
  const [bike, setBike] = useState<BikeDraft>(() => bikeDraftOf(bikeById(brought.unit?.bike), true))
  const [visit, setVisit] = useState<VisitDraft>(blankVisit)
  const [missing, setMissing] = useState<readonly string[]>([])
  const [working, setWorking] = useState(false)

  const of = brought.visit?.rider ?? null
  const suggested = of === null ? [] : registers.units.filter((unit) => unit.rider === of)
  const pick = (unit: Unit) => {
    setKnown(unit)
    const own = riderById(unit.rider)
    if (!brought.visit && own) setRider(riderDraftOf(own))
    setBike(bikeDraftOf(bikeById(unit.bike), bike.here))
  }
  const open = async () => {
    const forms = { unit: made ?? known, rider, bike, visit, further: brought.visit }
    const lacks = lacksOf(forms)
    setMissing(lacks)
    if (lacks.length > 0 || !forms.unit || !person || working) return
    setWorking(true)
    const stream = await openJob(station, person.id, registers, { ...forms, unit: forms.unit })
    go(chapterHref(stream, 'take-in'))
  }
  // Beside the long form of a new unit, below the short one of a known unit.
  const visitPart = <VisitPart draft={visit} onChange={setVisit} home={home} further={brought.visit !== null} />
  return (
    <ShopFrame
      place="bench"
      title={say('take-in.title')}
      actions={
        <Button kind="main" arrow="forward" onPress={() => void open()}>
          {say('take-in.open')}
        </Button>
      }
    >
      <h1>{say('take-in.title')}</h1>
      {brought.visit && (
        <p className="book">
          {say('take-in.further')} <span translate="no">{riderById(brought.visit.rider)?.name}</span>
        </p>
      )}
      <div className="two-columns take-in">
        <div>
          <UnitPart
            chosen={known}
            suggested={suggested}
            onPick={pick}
            made={made}
            onMade={setMade}
            onNew={(isNew) => {
              setMade(isNew ? blankUnit : null)
              setKnown(null)
            }}
          />
          {!made && visitPart}
        </div>
        <div>
          {made && visitPart}
          <RiderPart draft={rider} onChange={setRider} home={home} />
          <BikePart
            key={`${known?.id}`}
            draft={bike}
            onChange={setBike}
            known={!made && Boolean(bikeById(known?.bike))}
          />
        </div>
      </div>
      {missing.length > 0 && (
        <p className="refusal" role="alert">
          {say('take-in.needs', { what: missing.join(', ') })}
        </p>
      )}
    </ShopFrame>
  )
}
