import { type Measures, type Person, say } from '@legwork/trade'
import { useState } from 'react'
import { useHands, useHome, useRegisters, useStation, useStationStatus, useWriteRegister } from '../offline/hooks.tsx'
import type { BenchHands } from '../offline/lines.ts'
import { Choice } from '../ui/choice.tsx'
import { TextField } from '../ui/field.tsx'
import { Row } from '../ui/ledger.tsx'
import { Stepper } from '../ui/stepper.tsx'
import { usualHands } from './hands-today.ts'
import { ShopFrame } from './shop-frame.tsx'
import './station-page.css'

const offered: { [M in keyof Measures]: readonly Measures[M][] } = {
  pressure: ['psi', 'bar'],
  torque: ['N·m', 'in·lbf'],
  temperature: ['°C', '°F'],
  length: ['mm', 'in'],
}

interface Changing<M extends keyof Measures> {
  of: M
  label: string
  measures: Measures
  change: (patch: Partial<Measures>) => void
}

function MeasureChoice<M extends keyof Measures>({ of, label, measures, change }: Changing<M>) {
  const options = offered[of].map((value) => ({ value, label: <span translate="no">{value}</span> }))
  return (
    <Choice<Measures[M]>
      label={label}
      options={options}
      value={measures[of]}
      // The one that was pressed, of that kind.
      onChange={(measure) => change({ [of]: measure } as Partial<Measures>)}
    />
  )
}

/** What the person reads and writes in. A second change does not wait for the first to be kept, and takes it along. */
function PersonMeasures({ person }: { person: Person }) {
  const write = useWriteRegister()
  const [measures, setMeasures] = useState(person.measures)
  const change = (patch: Partial<Measures>): void => {
    const changed = { ...measures, ...patch }
    setMeasures(changed)
    void write('people', { ...person, measures: changed })
  }
  return (
    <section className="hand-measures">
      <h2>{say('hands.measures', { name: person.name })}</h2>
      <MeasureChoice of="pressure" label={say('hands.pressure')} measures={measures} change={change} />
      <MeasureChoice of="torque" label={say('hands.torque')} measures={measures} change={change} />
      <MeasureChoice of="temperature" label={say('hands.temperature')} measures={measures} change={change} />
      <MeasureChoice of="length" label={say('hands.length')} measures={measures} change={change} />
    </section>
  )
}

/** Until when there are hands at the bench today, and how many: what the Bench reckons with. */
function HandsToday() {
  const station = useStation()
  useStationStatus()
  const bench = station.store.memory.meta.bench ?? usualHands
  const change = (patch: Partial<BenchHands>) => void station.store.commit({ meta: { bench: { ...bench, ...patch } } })
  return (
    <section className="hand-measures">
      <h2>{say('hands.today')}</h2>
      <TextField
        label={say('hands.closes')}
        type="time"
        value={bench.closes}
        onChange={(closes) => /^\d\d:\d\d$/.test(closes) && change({ closes })}
      />
      <Stepper
        label={say('hands.people')}
        value={<span translate="no">{bench.people}</span>}
        less={say('hands.fewer')}
        more={say('hands.more')}
        atLeast={bench.people <= 1}
        atMost={bench.people >= 12}
        onLess={() => change({ people: bench.people - 1 })}
        onMore={() => change({ people: bench.people + 1 })}
      />
    </section>
  )
}

/** Whose hands are on, and the measures they read and write in. */
export function HandsPage() {
  const { people } = useRegisters()
  const { person, setHands } = useHands()
  const home = useHome()
  return (
    <ShopFrame place={null} title={say('hands.title')}>
      <h1>{say('hands.title')}</h1>
      {people.map((one) => (
        <Row key={one.id} className="list-row" chosen={one.id === person?.id} onPress={() => setHands(one.id)}>
          <b translate="no">{one.name}</b>
          <span>{say(`role.${one.role}`)}</span>
        </Row>
      ))}
      {!home && <HandsToday />}
      {person && <PersonMeasures key={person.id} person={person} />}
    </ShopFrame>
  )
}
