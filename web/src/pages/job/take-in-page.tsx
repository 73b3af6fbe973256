/** Take in a unit: find it or start it, the rider, the bike, what is asked for; then the job is open. */
import {
  type Bike,
  type Id,
  type Leg,
  type LegSheet,
  type Rider,
  type Sheet,
  type Source,
  type Stream,
  say,
  type Unit,
  type Visit,
} from '@legwork/trade'
import { useState } from 'react'
import { useLocation } from 'wouter'
import { QuantityInput } from '../../figures/quantity-input.tsx'
import { useHands, useRegisters, useStation, useWriteRegister } from '../../offline/hooks.tsx'
import { Button } from '../../ui/button.tsx'
import { Choice } from '../../ui/choice.tsx'
import { TextField } from '../../ui/field.tsx'
import { Row, SideHead } from '../../ui/ledger.tsx'
import { ShopFrame } from '../shop-frame.tsx'
import { chapterHref } from './job-address.ts'
import { type Posture, postureOf, postures, usualShare } from './posture.ts'
import './job.css'

interface NewUnit {
  label: string
  stanchion: number | null
  stroke: number | null
  damper: Sheet['damper']
  springLeg: Leg
  sheetName: string
  sheetRevision: string
}
const blankUnit: NewUnit = {
  label: '',
  stanchion: null,
  stroke: null,
  damper: 'sealed-cartridge',
  springLeg: 'left',
  sheetName: '',
  sheetRevision: '',
}

const emptyLeg = (role: LegSheet['role']): LegSheet => ({
  role,
  fixing: role === 'spring' ? 'nut-on-shaft' : 'bolt-behind-knob',
  bathOil: null,
  bathOilViscosity: null,
  washer: null,
  footTorque: null,
})

/** A sheet with what was measured at take-in; everything else waits for the maker's sheet. */
function sheetOf(made: NewUnit & { stroke: number }, id: Id, measured: Source): Sheet {
  const sourced = (value: number) => ({ value, source: measured })
  return {
    id,
    name: made.sheetName.trim(),
    revision: made.sheetRevision.trim(),
    generic: false,
    kind: 'fork-air',
    body: 'single-crown',
    damper: made.damper,
    stanchion: made.stanchion === null ? null : sourced(made.stanchion),
    stroke: sourced(made.stroke),
    spring: {},
    springKind: 'air',
    spacers: null,
    lowerVolume: null,
    maxPressure: null,
    freeLength: null,
    bushings: null,
    clicks: { rebound: sourced(20), compression: null },
    legs: {
      left: emptyLeg(made.springLeg === 'left' ? 'spring' : 'damper'),
      right: emptyLeg(made.springLeg === 'right' ? 'spring' : 'damper'),
    },
    limits: {},
  }
}

export function TakeInPage() {
  const station = useStation()
  const { person } = useHands()
  const writeRegister = useWriteRegister()
  const { units, riders, bikes } = useRegisters()
  const [, go] = useLocation()
  const [find, setFind] = useState('')
  const [unitId, setUnitId] = useState<Id | null>(null)
  const [isNew, setNew] = useState(false)
  const [made, setMade] = useState<NewUnit>(blankUnit)
  const [riderWay, setRiderWay] = useState<'known' | 'new' | 'alone'>('known')
  const [riderId, setRiderId] = useState<Id | null>(null)
  const [name, setName] = useState('')
  const [mass, setMass] = useState<number | null>(null)
  const [posture, setPosture] = useState<Posture>('standing')
  const [share, setShare] = useState<number | null>(null)
  const [hours, setHours] = useState<number | null>(null)
  const [headAngle, setHeadAngle] = useState<number | null>(null)
  const [frontMass, setFrontMass] = useState<number | null>(null)
  const [asked, setAsked] = useState('')
  const [leftWith, setLeftWith] = useState('')
  const [missing, setMissing] = useState<string[]>([])

  const known = units.find((one) => one.id === unitId) ?? null
  const words = find.trim().toLowerCase()
  const found = units.filter((unit) => {
    const rider = riders.find((one) => one.id === unit.rider)
    return words !== '' && `${unit.label} ${unit.description} ${rider?.name ?? ''}`.toLowerCase().includes(words)
  })

  const pick = (unit: Unit) => {
    setUnitId(unit.id)
    setNew(false)
    const rider = riders.find((one) => one.id === unit.rider)
    const bike = bikes.find((one) => one.id === unit.bike)
    setRiderWay(rider ? 'known' : 'new')
    setRiderId(rider?.id ?? null)
    setMass(rider?.mass ?? null)
    setShare(rider?.frontShare ?? null)
    setPosture(postureOf(rider?.posture ?? null))
    setHours(rider?.hoursPerWeek ?? null)
    setHeadAngle(bike?.headAngle ?? null)
    setFrontMass(bike?.frontMass ?? null)
  }

  const open = async () => {
    const lacks: string[] = []
    if (!known && (!isNew || made.label.trim() === '')) lacks.push(say('take-in.label'))
    if (isNew && made.stroke === null) lacks.push(say('take-in.travel'))
    if (isNew && made.sheetName.trim() === '') lacks.push(say('take-in.sheet-name'))
    if (isNew && made.sheetRevision.trim() === '') lacks.push(say('take-in.sheet-revision'))
    if (riderWay === 'new' && name.trim() === '') lacks.push(say('take-in.rider.name'))
    setMissing(lacks)
    if (lacks.length > 0 || !person) return
    const now = station.now()
    const measured: Source = {
      kind: 'measured-here',
      document: null,
      revision: null,
      page: null,
      person: person.id,
      at: now,
      instrument: null,
    }
    const fresh = station.newId
    let rider: Rider | null = null
    if (riderWay === 'new')
      rider = { id: fresh(), name: name.trim(), mass, posture, frontShare: share, hoursPerWeek: hours, contact: null }
    if (riderWay === 'known') {
      const before = riders.find((one) => one.id === riderId)
      rider = before ? { ...before, mass, posture, frontShare: share, hoursPerWeek: hours } : null
    }
    if (rider) await writeRegister('riders', rider)
    const before = bikes.find((one) => one.id === known?.bike)
    const bike: Bike = {
      id: before?.id ?? fresh(),
      rider: rider?.id ?? null,
      name: before?.name ?? '–',
      leverage: before?.leverage ?? null,
      rearSprungMass: before?.rearSprungMass ?? null,
      headAngle,
      frontMass,
    }
    await writeRegister('bikes', bike)
    let unit = known
    if (!unit && made.stroke !== null) {
      const sheet = sheetOf({ ...made, stroke: made.stroke }, fresh(), measured)
      await writeRegister('sheets', sheet)
      const stanchion = made.stanchion === null ? '–' : String(Math.round(made.stanchion * 1000))
      const description = say('take-in.unit-says', { stanchion, travel: Math.round(made.stroke * 1000) })
      unit = {
        id: fresh(),
        label: made.label.trim(),
        kind: 'fork-air',
        description,
        serial: null,
        rider: rider?.id ?? null,
        bike: bike.id,
        sheet: sheet.id,
      }
      await writeRegister('units', unit)
    }
    if (!unit) return
    const visit: Visit = { id: fresh(), rider: rider?.id ?? null, promised: null, leftWith: leftWith.trim() || null }
    await writeRegister('visits', visit)
    const stream: Stream = `job:${fresh()}`
    const body = {
      unit: unit.id,
      rider: rider?.id ?? null,
      bike: bike.id,
      visit: visit.id,
      asked: asked.trim() ? await station.keepText(asked.trim()) : null,
      spendAllowed: null,
    }
    await station.keepDraft(station.draft(stream, 'job-opened', body, person.id))
    go(chapterHref(stream, 'take-in'))
  }

  const usual = usualShare[posture]
  const change = (patch: Partial<NewUnit>) => setMade({ ...made, ...patch })
  const dampers = ['sealed-cartridge', 'bladder-cartridge', 'open-bath'] as const
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
      <div className="two-columns take-in">
        <div>
          <SideHead place="above" title={say('take-in.unit')}>
            {!isNew && (
              <>
                <TextField
                  label={say('take-in.find')}
                  hint={say('take-in.find.note')}
                  value={find}
                  onChange={setFind}
                />
                {found.map((unit) => (
                  <Row
                    key={unit.id}
                    onPress={() => pick(unit)}
                    chosen={unit.id === unitId}
                    name={say('take-in.pick', { label: unit.label })}
                  >
                    <span translate="no">
                      <b>{unit.label}</b> {unit.description}
                    </span>
                  </Row>
                ))}
                {words !== '' && found.length === 0 && <p className="book">{say('take-in.none-found')}</p>}
                <Button
                  kind="second"
                  size="row"
                  onPress={() => {
                    setNew(true)
                    setUnitId(null)
                    setRiderWay('new')
                  }}
                >
                  {say('take-in.new-unit')}
                </Button>
              </>
            )}
            {isNew && (
              <>
                <p className="book">{say('take-in.kind.only-air-fork')}</p>
                <TextField
                  label={say('take-in.label')}
                  hint={say('take-in.label.note')}
                  value={made.label}
                  onChange={(label) => change({ label })}
                />
                <QuantityInput
                  label={say('take-in.stanchion')}
                  kind="length"
                  value={made.stanchion}
                  onChange={(stanchion) => change({ stanchion })}
                />
                <QuantityInput
                  label={say('take-in.travel')}
                  kind="length"
                  value={made.stroke}
                  onChange={(stroke) => change({ stroke })}
                />
                <Choice
                  label={say('take-in.damper')}
                  options={dampers.map((value) => ({ value, label: say(`take-in.damper.${value}`) }))}
                  value={dampers.find((one) => one === made.damper) ?? null}
                  onChange={(damper) => change({ damper })}
                />
                <Choice
                  label={say('take-in.spring-leg')}
                  options={(['left', 'right'] as const).map((value) => ({ value, label: say(`leg.${value}`) }))}
                  value={made.springLeg}
                  onChange={(springLeg) => change({ springLeg })}
                />
                <TextField
                  label={say('take-in.sheet-name')}
                  hint={say('take-in.sheet-note')}
                  value={made.sheetName}
                  onChange={(sheetName) => change({ sheetName })}
                />
                <TextField
                  label={say('take-in.sheet-revision')}
                  value={made.sheetRevision}
                  onChange={(sheetRevision) => change({ sheetRevision })}
                />
                <Button kind="second" size="row" onPress={() => setNew(false)}>
                  {say('take-in.known-unit')}
                </Button>
              </>
            )}
          </SideHead>
          <SideHead place="above" title={say('take-in.visit')}>
            <TextField label={say('take-in.asked')} value={asked} onChange={setAsked} lines={2} />
            <TextField
              label={say('take-in.left-with')}
              hint={say('take-in.left-with.note')}
              value={leftWith}
              onChange={setLeftWith}
            />
          </SideHead>
        </div>
        <div>
          <SideHead place="above" title={say('take-in.rider')}>
            <Choice
              label={say('take-in.rider')}
              quiet
              options={(['known', 'new', 'alone'] as const).map((value) => ({
                value,
                label: say(`take-in.rider.${value}`),
              }))}
              value={riderWay}
              onChange={setRiderWay}
            />
            {riderWay === 'known' && <p translate="no">{riders.find((one) => one.id === riderId)?.name ?? '–'}</p>}
            {riderWay === 'new' && <TextField label={say('take-in.rider.name')} value={name} onChange={setName} />}
            {riderWay !== 'alone' && (
              <>
                <QuantityInput
                  label={say('take-in.rider.mass')}
                  hint={say('take-in.rider.mass.note')}
                  kind="mass"
                  value={mass}
                  onChange={setMass}
                />
                <Choice
                  label={say('take-in.rider.posture')}
                  options={postures.map((value) => ({ value, label: say(`take-in.posture.${value}`) }))}
                  value={posture}
                  onChange={setPosture}
                />
                <QuantityInput
                  label={say('take-in.rider.share')}
                  suggestion={say('take-in.usual', {
                    low: usual.low * 100,
                    high: usual.high * 100,
                    measure: say('take-in.measure.percent'),
                  })}
                  kind="fraction"
                  value={share}
                  onChange={setShare}
                />
                <QuantityInput label={say('take-in.rider.hours')} kind="number" value={hours} onChange={setHours} />
              </>
            )}
          </SideHead>
          <SideHead place="above" title={say('take-in.bike')}>
            <QuantityInput
              label={say('take-in.bike.head-angle')}
              kind="angle"
              value={headAngle}
              onChange={setHeadAngle}
            />
            <QuantityInput
              label={say('take-in.bike.front-mass')}
              kind="mass"
              digits={2}
              value={frontMass}
              onChange={setFrontMass}
            />
          </SideHead>
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
