/** Set up: the pressure to start from and where it comes from, what the pump will show, and then measured sag. */
import { Refusal, standardAir } from '@legwork/engine'
import { type EntryBodies, type Source, say } from '@legwork/trade'
import { useMemo, useState } from 'react'
import { DoubtBand } from '../../figures/doubt-band.tsx'
import { QuantityText } from '../../figures/figure.tsx'
import { QuantityInput } from '../../figures/quantity-input.tsx'
import { SourceMark } from '../../figures/source-mark.tsx'
import { Button, LinkButton } from '../../ui/button.tsx'
import { Choice } from '../../ui/choice.tsx'
import { SideHead, ValueRow } from '../../ui/ledger.tsx'
import { Stepper } from '../../ui/stepper.tsx'
import { ByWhom } from './by-whom.tsx'
import { chapterHref } from './job-address.ts'
import { pumpsOf, useJobView, useWriting } from './job-view.tsx'
import { postureText } from './posture.ts'
import { ReadingField, Shown, useShownText } from './readings.tsx'
import { Refused } from './refused.tsx'
import { SetUpChart } from './set-up-chart.tsx'
import { missingForSpring } from './sheet-fields.ts'
import { SheetFillIn } from './sheet-fill-in.tsx'
import {
  airSpringOf,
  correctedBySag,
  onTheTrail,
  pumpShows,
  type StartInputs,
  sagAt,
  startPressure,
} from './start-pressure.ts'

const seaLevel = standardAir(0).ambient
const psi = 6894.757293168
const bench = 293.15

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

function WhereFrom({
  inputs,
  pressure,
  lowerForce,
  load,
}: {
  inputs: StartInputs
  pressure: number
  lowerForce: number
  load: number
}) {
  const { rider } = useJobView()
  const text = useShownText()
  const { sheet, spacers } = inputs
  const spring = airSpringOf(sheet, spacers)
  const positive = spring.positiveVolume - spacers * (spring.spacerVolume ?? 0)
  const row = (kind: Source['kind'], name: string, value: React.ReactNode) => (
    <ValueRow
      name={
        <>
          <SourceMark kind={kind} /> {name}
        </>
      }
    >
      {value}
    </ValueRow>
  )
  return (
    <SideHead place="above" title={say('set-up.where-from', { pressure: text(pressure, 'Pa') })}>
      <p className="formula" translate="no">
        F = (p⁺ − p<sub>a</sub>)·A⁺ − (p⁻ − p<sub>a</sub>)·A⁻ + Σ (p<sub>L</sub> − p<sub>a</sub>)·A<sub>L</sub>
      </p>
      <p className="book">{say('set-up.formula')}</p>
      {row('rider-said', say('set-up.row.mass'), <QuantityText value={inputs.riderMass} kind="mass" />)}
      {row(
        'common-practice',
        say('set-up.row.share', { posture: postureText(rider?.posture ?? null) }),
        <QuantityText value={inputs.frontShare} kind="fraction" />,
      )}
      {row(
        'common-practice',
        say('set-up.row.front-mass'),
        <QuantityText value={inputs.frontMass} kind="mass" digits={2} />,
      )}
      {row('measured-here', say('set-up.row.head-angle'), <QuantityText value={inputs.headAngle} kind="angle" />)}
      {row('worked-out', say('set-up.row.load'), <QuantityText value={load} kind="force" digits={0} />)}
      {row('makers-sheet', say('set-up.row.positive', { n: spacers }), <QuantityText value={positive} kind="volume" />)}
      {row(
        'makers-sheet',
        say('set-up.row.negative'),
        <QuantityText value={spring.negativeVolume ?? null} kind="volume" />,
      )}
      {row(
        'makers-sheet',
        say('set-up.row.lower'),
        <QuantityText value={spring.lower?.volume ?? null} kind="volume" />,
      )}
      {row(
        'common-practice',
        say('set-up.row.sag', { percent: Math.round(inputs.sag * 100) }),
        <QuantityText value={inputs.sag * spring.stroke} kind="length" />,
      )}
      <p className="book">{say('set-up.lower-carries', { force: text(lowerForce, 'N') })}</p>
    </SideHead>
  )
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
      <div className="two-columns set-up">
        <div>
          <div className="figure start-with">
            <p className="label">{say('set-up.start-with')}</p>
            <p>
              <QuantityText value={pressure} kind="pressure" size="page" />
            </p>
            <DoubtBand value={pressure} low={worked.band[0]} high={worked.band[1]} kind="pressure" says={doubt} />
          </div>
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
      </div>
      <SetUpChart inputs={inputs} pressure={pressure} load={worked.load} />
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

function MeasuredSag({ inputs }: { inputs: StartInputs }) {
  const { state, sheet } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const [above, setAbove] = useState<number | null>(state.sag?.fromAbove ?? null)
  const [below, setBelow] = useState<number | null>(state.sag?.fromBelow ?? null)
  const filled = state.setUp?.pressure ?? null
  const corrected = useMemo(() => {
    if (above === null || below === null || filled === null || !sheet) return null
    try {
      const { spacers, sag, ambient } = inputs
      return correctedBySag(sheet, { fromAbove: above, fromBelow: below, pressure: filled, spacers, sag, ambient })
    } catch (trouble) {
      if (trouble instanceof Refusal) return null
      throw trouble
    }
  }, [above, below, filled, sheet, inputs])
  return (
    <SideHead place="above" title={say('set-up.measured')} note={say('set-up.measured.note')}>
      <form
        className="keep-line"
        onSubmit={(event) => {
          event.preventDefault()
          if (above !== null && below !== null)
            void write('sag-measured', { fromAbove: above, fromBelow: below, instrument: null })
        }}
      >
        <ReadingField label={say('set-up.from-above')} measure="m" value={above} onChange={setAbove} />
        <ReadingField label={say('set-up.from-below')} measure="m" value={below} onChange={setBelow} />
        <Button kind="second" type="submit">
          {say('set-up.measured.act')}
        </Button>
      </form>
      {state.sag && <ByWhom made={state.sag} />}
      {corrected && (
        <>
          <ValueRow name={say('set-up.mean')}>
            <Shown value={corrected.mean} measure="m" />
          </ValueRow>
          <ValueRow name={say('set-up.friction')}>
            <Shown value={corrected.friction} measure="N" />
          </ValueRow>
          <ValueRow name={say('set-up.real-load')}>
            <Shown value={corrected.load} measure="N" />
          </ValueRow>
          <p>
            {say('set-up.corrected', {
              percent: Math.round(inputs.sag * 100),
              pressure: text(corrected.pressure, 'Pa'),
            })}
          </p>
        </>
      )}
      <Refused refusal={refusal} />
    </SideHead>
  )
}

function Setting({ spacers }: { spacers: number }) {
  const { state, sheet, stream, instruments } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const pumps = pumpsOf(instruments)
  const { setting } = state
  const [pressure, setPressure] = useState<number | null>(setting?.pressure ?? state.setUp?.pressure ?? null)
  const [pump, setPump] = useState<string | null>(pumps[0]?.id ?? null)
  const [rebound, setRebound] = useState<number | null>(
    setting?.clicks.rebound ?? state.snapshot.rebound?.reading?.value ?? null,
  )
  const [compression, setCompression] = useState<number | null>(
    setting?.clicks.compression ?? state.snapshot.compression?.reading?.value ?? null,
  )
  return (
    <SideHead place="above" title={say('set-up.setting')} note={say('set-up.setting.note')}>
      <form
        className="setting-form"
        onSubmit={(event) => {
          event.preventDefault()
          if (pressure === null) return
          void write('setting-written', {
            pressure,
            temperature: bench,
            pump,
            spacers,
            clicks: { rebound, compression },
          })
        }}
      >
        <ReadingField label={say('set-up.setting.pressure')} measure="Pa" value={pressure} onChange={setPressure} />
        {pumps.length > 1 && (
          <Choice
            label={say('set-up.setting.pump')}
            options={pumps.map((one) => ({ value: one.id, label: <span translate="no">{one.name}</span> }))}
            value={pump}
            onChange={setPump}
          />
        )}
        {sheet?.clicks.rebound && (
          <ReadingField label={say('set-up.setting.rebound')} measure="clicks" value={rebound} onChange={setRebound} />
        )}
        {sheet?.clicks.compression && (
          <ReadingField
            label={say('set-up.setting.compression')}
            measure="clicks"
            value={compression}
            onChange={setCompression}
          />
        )}
        <Button kind={state.setUp && !setting ? 'main' : 'second'} type="submit">
          {say('set-up.setting.act')}
        </Button>
      </form>
      <Refused refusal={refusal} />
      {setting && (
        <p>
          {say('set-up.setting.done', {
            pressure: text(setting.pressure, 'Pa'),
            temperature: text(setting.temperature, 'K'),
          })}{' '}
          <ByWhom made={setting} />{' '}
          <LinkButton kind="main" arrow="forward" href={chapterHref(stream, 'hand-over')}>
            {say('set-up.to-hand-over')}
          </LinkButton>
        </p>
      )}
    </SideHead>
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
