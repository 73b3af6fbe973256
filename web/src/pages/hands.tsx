import { type Measures, type Person, say } from '@legwork/trade'
import { useHands, useRegisters, useWriteRegister } from '../offline/hooks.tsx'
import { Choice } from '../ui/choice.tsx'
import { Row } from '../ui/ledger.tsx'
import { ShopFrame } from './shop-frame.tsx'
import './station-page.css'

const offered: { [M in keyof Measures]: readonly Measures[M][] } = {
  pressure: ['psi', 'bar'],
  torque: ['N·m', 'in·lbf'],
  temperature: ['°C', '°F'],
  length: ['mm', 'in'],
}

function MeasureChoice<M extends keyof Measures>({ of, label, person }: { of: M; label: string; person: Person }) {
  const write = useWriteRegister()
  const options = offered[of].map((value) => ({ value, label: <span translate="no">{value}</span> }))
  return (
    <Choice<Measures[M]>
      label={label}
      options={options}
      value={person.measures[of]}
      onChange={(measure) => write('people', { ...person, measures: { ...person.measures, [of]: measure } })}
    />
  )
}

/** Whose hands are on, and the measures they read and write in. */
export function HandsPage() {
  const { people } = useRegisters()
  const { person, setHands } = useHands()
  return (
    <ShopFrame place={null} title={say('hands.title')}>
      <h1>{say('hands.title')}</h1>
      {people.map((one) => (
        <Row key={one.id} className="list-row" chosen={one.id === person?.id} onPress={() => setHands(one.id)}>
          <b translate="no">{one.name}</b>
          <span>{say(`role.${one.role}`)}</span>
        </Row>
      ))}
      {person && (
        <section className="hand-measures">
          <h2>{say('hands.measures', { name: person.name })}</h2>
          <MeasureChoice of="pressure" label={say('hands.pressure')} person={person} />
          <MeasureChoice of="torque" label={say('hands.torque')} person={person} />
          <MeasureChoice of="temperature" label={say('hands.temperature')} person={person} />
          <MeasureChoice of="length" label={say('hands.length')} person={person} />
        </section>
      )}
    </ShopFrame>
  )
}
