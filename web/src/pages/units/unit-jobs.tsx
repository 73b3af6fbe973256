/** The jobs of a unit, the newest first, each with all that was read in it: the table behind the life line. */
import { type JobState, type Stream, say } from '@legwork/trade'
import { dayAndYear } from '../../figures/moment.ts'
import { useFigureWorld } from '../../figures/world.tsx'
import { SourceMark } from '../../marks/source-mark.tsx'
import { Row } from '../../ui/ledger.tsx'
import { readAs } from '../job/read-as.ts'
import { Shown } from '../job/readings.tsx'
import { nameOfReading } from './life-line.tsx'
import type { LifeReading, LifeVisit } from './life-of.ts'

function Reading({ read }: { read: LifeReading }) {
  const { nameOf } = useFigureWorld()
  const { what, leg, reading, phase, person } = read
  const who = nameOf(person) ?? say('source.somebody')
  const instrument = reading.instrument ? nameOf(reading.instrument) : null
  return (
    <li>
      <span className="what">
        <SourceMark kind="measured-here" /> {nameOfReading(what, leg)}
      </span>
      <Shown value={reading.value} measure={reading.measure} {...readAs(what)} hand />
      <small className="book">
        {say(`life.${phase}`)} ·{' '}
        <span translate="no">{instrument ? say('life.with', { name: who, instrument }) : who}</span>
      </small>
    </li>
  )
}

interface UnitJobsProps {
  visits: readonly LifeVisit[]
  states: ReadonlyMap<Stream, JobState>
  numberOf: (stream: Stream) => string | null
  textOf: (digest: string | null) => string | null
}

export function UnitJobs({ visits, states, numberOf, textOf }: UnitJobsProps) {
  return visits.toReversed().map(({ stream, from, services, state, readings }) => {
    const asked = textOf(states.get(stream)?.opened?.asked ?? null)
    return (
      <Row key={stream} href={`/jobs/${encodeURIComponent(stream)}`} className="unit-job">
        <b translate="no">{numberOf(stream) ?? '–'}</b>
        <div>
          <span translate="no">{dayAndYear(from)}</span>
          <small className="book">{say(`job.state.${state}`)}</small>
        </div>
        <div>
          <span>
            {services.length > 0
              ? services.map((service) => say(`service.${service}`)).join(', ')
              : say('life.unserviced')}
          </span>
          {asked && (
            <small className="book" translate="no">
              <em>“{asked}”</em>
            </small>
          )}
        </div>
        <ul className="read">
          {readings.length === 0 && <li className="book">{say('life.nothing')}</li>}
          {readings.map((read, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: readings of one job keep their order
            <Reading key={index} read={read} />
          ))}
        </ul>
      </Row>
    )
  })
}
