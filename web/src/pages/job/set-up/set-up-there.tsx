/** What the setting becomes at the trail's altitude and temperature. */
import { ambientShift } from '@legwork/engine'
import { say } from '@legwork/trade'
import { QuantityInput } from '../../../figures/quantity-input.tsx'
import { WorkedOut } from '../../../figures/workings.tsx'
import { Button } from '../../../ui/button.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { ByWhom } from '../by-whom.tsx'
import { useJobView, useWriting } from '../job-view.tsx'
import { Refused } from '../refused.tsx'
import { airSpringOf, type StartInputs } from '../start-pressure.ts'
import { thereWorkings } from './set-up-workings.tsx'
import { bench } from './what-if.ts'

/** Null while nothing readable stands there. */
export interface Trail {
  altitude: number | null
  temperature: number | null
}

interface ThereProps {
  inputs: StartInputs
  pressure: number
  load: number
  trail: Trail
  onTrail: (trail: Trail) => void
}

function Shift({ inputs, pressure, load, trail }: Omit<ThereProps, 'onTrail'>) {
  const { altitude, temperature } = trail
  if (altitude === null || temperature === null) return <p className="book">{say('set-up.there.empty')}</p>
  const there = { altitude, temperature }
  const spring = airSpringOf(inputs.sheet, inputs.spacers)
  const shift = ambientShift(spring, { pressure, load, from: bench, to: there })
  return (
    <>
      <ValueRow name={say('set-up.there.shows')}>
        <WorkedOut
          value={shift.pressure ?? null}
          kind="pressure"
          size="row-small"
          workings={() => thereWorkings(inputs, pressure, load, there, 'pressure')}
        />
      </ValueRow>
      <ValueRow name={say('set-up.there.sag')}>
        <WorkedOut
          value={shift.strokeThere ?? null}
          kind="length"
          digits={1}
          workings={() => thereWorkings(inputs, pressure, load, there, 'strokeThere')}
        />
      </ValueRow>
      {shift.overMaximum && <p className="refusal">{say('set-up.there.over')}</p>}
    </>
  )
}

const altitudeWithin = (value: number): string | null =>
  value < -1000 || value > 11_000 ? say('set-up.there.altitude-range') : null
const temperatureWithin = (value: number): string | null =>
  value < 220 || value > 340 ? say('set-up.there.temperature-range') : null

/** Where it will be ridden goes along with the job: the page handed over says what the setting becomes there. */
function KeepTrail({ altitude, temperature }: Trail) {
  const { state } = useJobView()
  const { write, refusal } = useWriting()
  const kept = state.trail
  const same = kept !== null && kept.altitude === altitude && kept.temperature === temperature
  if (altitude === null || temperature === null) return null
  return (
    <>
      {same ? (
        <p className="written">
          {say('set-up.there.kept')} <ByWhom made={kept} />
        </p>
      ) : (
        <Button kind="second" size="row" onPress={() => void write('trail-said', { altitude, temperature })}>
          {say('set-up.there.keep')}
        </Button>
      )}
      <Refused refusal={refusal} />
    </>
  )
}

export function There({ onTrail, ...asked }: ThereProps) {
  const { trail } = asked
  const held = {
    altitude: trail.altitude !== null && altitudeWithin(trail.altitude) === null ? trail.altitude : null,
    temperature: trail.temperature !== null && temperatureWithin(trail.temperature) === null ? trail.temperature : null,
  }
  return (
    <SideHead place="above" title={say('set-up.there')} note={say('set-up.there.note')}>
      <div className="trail">
        <QuantityInput
          label={say('set-up.trail.altitude')}
          kind="altitude"
          value={trail.altitude}
          onChange={(altitude) => onTrail({ ...trail, altitude })}
          judge={altitudeWithin}
        />
        <QuantityInput
          label={say('set-up.trail.temperature')}
          kind="temperature"
          value={trail.temperature}
          onChange={(temperature) => onTrail({ ...trail, temperature })}
          judge={temperatureWithin}
        />
      </div>
      <Shift {...asked} trail={held} />
      <KeepTrail {...held} />
    </SideHead>
  )
}
