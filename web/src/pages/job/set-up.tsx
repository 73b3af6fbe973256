/** Set up: the pressure to start from and where it comes from, what the pump will show, and then measured sag. */
import { Refusal, standardAir } from '@legwork/engine'
import { type EntryBodies, type Source, say } from '@legwork/trade'
import { useMemo, useState } from 'react'
import { Figure, QuantityText } from '../../figures/figure.tsx'
import { QuantityInput } from '../../figures/quantity-input.tsx'
import { Button, LinkButton } from '../../ui/button.tsx'
import { Stepper } from '../../ui/stepper.tsx'
import { ByWhom } from './by-whom.tsx'
import { chapterHref } from './job-address.ts'
import { pumpsOf, useJobView, useWriting } from './job-view.tsx'
import { useShownText } from './readings.tsx'
import { Refused } from './refused.tsx'
import { SetUpChart } from './set-up-chart.tsx'
import { MeasuredSag } from './set-up-measured.tsx'
import { Setting } from './set-up-setting.tsx'
import { WhereFrom } from './set-up-where-from.tsx'
import { missingForSpring } from './sheet-fields.ts'
import { SheetFillIn } from './sheet-fill-in.tsx'
import { onTheTrail, pumpShows, type StartInputs, sagAt, startPressure } from './start-pressure.ts'

const seaLevel = standardAir(0).ambient
const psi = 6894.757293168
const bench = 293.15

const workedOut: Source = {
  kind: 'worked-out',
  document: null,
  revision: null,
  page: null,
  person: null,
  at: null,
  instrument: null,
}

/** What the numbers need and is not known. */
function useInputs(sagWanted: number, spacers: number): StartInputs | { missing: string[] } {
  const { sheet, rider, bike } = useJobView()
  if (!rider) return { missing: [say('set-up.alone')] }
  const missing: string[] = []
  if (rider.mass === null) missing.push(say('set-up.missing.mass'))
  if (rider.frontShare === null) missing.push(say('set-up.missing.share'))
  if (!bike || bike.headAngle === null) missing.push(say('set-up.missing.head-angle'))
  if (!bike || bike.frontMass === null) missing.push(say('set-up.missing.front-mass'))
  if (!sheet || missingForSpring(sheet).length > 0) missing.push(say('set-up.missing.sheet'))
  if (
    !sheet ||
    rider.mass === null ||
    rider.frontShare === null ||
    bike?.headAngle == null ||
    bike.frontMass === null ||
    missing.length > 0
  )
    return { missing }
  return {
    sheet,
    spacers,
    riderMass: rider.mass,
    frontShare: rider.frontShare,
    frontMass: bike.frontMass,
    headAngle: bike.headAngle,
    sag: sagWanted,
    ambient: seaLevel,
  }
}

function Start({
  inputs,
  setSag,
  setSpacers,
}: {
  inputs: StartInputs
  setSag: (sag: number) => void
  setSpacers: (n: number) => void
}) {
  const { state, stream, instruments, sheet } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const [altitude, setAltitude] = useState<number | null>(1650)
  const [there, setThere] = useState<number | null>(285.15)
  const [chosen, setChosen] = useState<number | null>(null)
  const worked = useMemo(() => {
    try {
      return startPressure(inputs)
    } catch (trouble) {
      if (trouble instanceof Refusal) return trouble
      throw trouble
    }
  }, [inputs])
  if (worked instanceof Refusal)
    return (
      <p className="refusal" role="alert" translate="no">
        {worked.message}
      </p>
    )
  const pressure = chosen ?? worked.pressure
  const doubt = worked.doubtOf[0]?.input === 'mass' ? say('set-up.doubt.mass') : say('set-up.doubt.share')
  const trail =
    altitude !== null && there !== null
      ? onTheTrail(
          pressure,
          { temperature: bench, ambient: seaLevel },
          { temperature: there, ambient: standardAir(altitude).ambient },
        )
      : null
  const here = sagAt(inputs, pressure)
  const over = sheet?.maxPressure && pressure > sheet.maxPressure.value
  const body: EntryBodies['set-up-worked-out'] = {
    pressure,
    band: worked.band,
    temperature: bench,
    ambient: seaLevel,
    riderMass: inputs.riderMass,
    frontShare: inputs.frontShare,
    sag: inputs.sag,
    load: worked.load,
    spacers: inputs.spacers,
  }
  return (
    <>
      <SetUpChart inputs={inputs} pressure={pressure} load={worked.load}>
        <div className="start-with">
          <Figure
            label={say('set-up.start-with')}
            value={pressure}
            kind="pressure"
            size="page"
            source={workedOut}
            doubt={{ low: worked.band[0], high: worked.band[1], says: doubt }}
          />
          <p className="book">
            {say('set-up.sag-here', {
              pressure: text(pressure, 'Pa'),
              sag: text(here.stroke, 'm'),
              percent: Math.round(here.fraction * 100),
            })}
          </p>
          {pumpsOf(instruments).map((pump) => (
            <p key={pump.id} className="book">
              {say('set-up.pumps', {
                pump: pump.name,
                shown: text(pumpShows(inputs.sheet, inputs.spacers, pressure, pump), 'Pa'),
              })}
            </p>
          ))}
          <div className="trail">
            <QuantityInput
              label={say('set-up.trail.altitude')}
              kind="altitude"
              value={altitude}
              onChange={setAltitude}
            />
            <QuantityInput
              label={say('set-up.trail.temperature')}
              kind="temperature"
              value={there}
              onChange={setThere}
            />
          </div>
          {trail !== null && altitude !== null && there !== null && (
            <p className="book">
              {say('set-up.trail', {
                altitude: Math.round(altitude),
                temperature: text(there, 'K'),
                pressure: text(trail, 'Pa'),
              })}
            </p>
          )}
        </div>
        <WhereFrom inputs={inputs} pressure={pressure} load={worked.load} lowerForce={worked.lowerForce} />
      </SetUpChart>
      <div className="steppers">
        <Stepper
          label={say('set-up.control.pressure')}
          value={<QuantityText value={pressure} kind="pressure" />}
          less={say('set-up.less', { what: say('set-up.control.pressure') })}
          more={say('set-up.more', { what: say('set-up.control.pressure') })}
          onLess={() => setChosen(pressure - psi)}
          onMore={() => setChosen(pressure + psi)}
        />
        <Stepper
          label={say('set-up.control.spacers')}
          value={<span translate="no">{inputs.spacers}</span>}
          less={say('set-up.less', { what: say('set-up.control.spacers') })}
          more={say('set-up.more', { what: say('set-up.control.spacers') })}
          onLess={() => setSpacers(inputs.spacers - 1)}
          onMore={() => setSpacers(inputs.spacers + 1)}
          atLeast={inputs.spacers === 0}
        />
        <Stepper
          label={say('set-up.sag-wanted')}
          value={<QuantityText value={inputs.sag} kind="fraction" />}
          less={say('set-up.less', { what: say('set-up.sag-wanted') })}
          more={say('set-up.more', { what: say('set-up.sag-wanted') })}
          onLess={() => setSag(Math.max(0.05, inputs.sag - 0.01))}
          onMore={() => setSag(Math.min(0.5, inputs.sag + 0.01))}
        />
        {over && sheet?.maxPressure ? (
          <p className="refusal">{say('set-up.over-maximum', { maximum: text(sheet.maxPressure.value, 'Pa') })}</p>
        ) : (
          <Button
            kind={state.setUp ? 'second' : 'main'}
            arrow="forward"
            onPress={() => void write('set-up-worked-out', body)}
          >
            {say('set-up.write-start')}
          </Button>
        )}
      </div>
      <Refused refusal={refusal} />
      {state.setUp && (
        <p className="written">
          {say('set-up.written', { pressure: text(state.setUp.pressure, 'Pa') })} <ByWhom made={state.setUp} />{' '}
          {state.currentStep !== null && (
            <LinkButton kind="second" size="row" href={chapterHref(stream, 'work')}>
              {say('set-up.to-fill')}
            </LinkButton>
          )}
        </p>
      )}
    </>
  )
}

export function SetUp() {
  const { state, sheet } = useJobView()
  const [sag, setSag] = useState(state.setUp?.sag ?? 0.2)
  const [spacers, setSpacers] = useState(state.setUp?.spacers ?? sheet?.spacers?.value ?? 0)
  const found = useInputs(sag, spacers)
  const inputs = 'missing' in found ? null : found
  return (
    <div>
      {inputs ? (
        <Start inputs={inputs} setSag={setSag} setSpacers={setSpacers} />
      ) : (
        <div>
          {'missing' in found && <p>{say('set-up.missing', { what: found.missing.join(', ') })}</p>}
          <p className="book">{say('set-up.missing.note')}</p>
          {sheet && missingForSpring(sheet).length > 0 && (
            <SheetFillIn sheet={sheet} fields={missingForSpring(sheet)} />
          )}
        </div>
      )}
      <div className="two-columns">
        {inputs && <MeasuredSag inputs={inputs} />}
        <Setting spacers={spacers} />
      </div>
    </div>
  )
}
