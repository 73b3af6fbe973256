/** The pressure to start from, over the drawing and the curve that show it, with all that follows from it. */
import { Refusal, standardAir } from '@legwork/engine'
import { assumedPlaces, type EntryBodies, say, targetSag } from '@legwork/trade'
import { useMemo, useState } from 'react'
import { DoubtBand } from '../../../figures/doubt-band.tsx'
import { Figure } from '../../../figures/figure.tsx'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import { WorkedOut } from '../../../figures/workings.tsx'
import { useMeasures } from '../../../figures/world.tsx'
import { Button, LinkButton } from '../../../ui/button.tsx'
import { ByWhom } from '../by-whom.tsx'
import { chapterHref } from '../job-address.ts'
import { useJobView, useWriting } from '../job-view.tsx'
import { useShownText } from '../readings.tsx'
import { Refused } from '../refused.tsx'
import { bushingFriction, loadDoubt, type StartInputs, type StartPressure, workedOut } from '../start-pressure.ts'
import { pressReadings, sagReadings } from './chart-readings.ts'
import { standingThen } from './last-visit.ts'
import { PressureStep, Spacers, StrokeStep, WhatIfBar } from './set-up-bar.tsx'
import { SetUpChart } from './set-up-chart.tsx'
import { Clicks } from './set-up-clicks.tsx'
import { Pumps } from './set-up-pumps.tsx'
import { SagBand } from './set-up-sag.tsx'
import { There, type Trail } from './set-up-there.tsx'
import { WhatIfTable } from './set-up-what-if.tsx'
import { WhereFrom } from './set-up-where-from.tsx'
import { pressureWorkings } from './set-up-workings.tsx'
import { useLastVisit } from './use-last-visit.ts'
import { answered, bench, outcomeOf, sagOf, standing, type WhatIf } from './what-if.ts'

export interface StartProps {
  inputs: StartInputs
  /** Chosen by hand instead of the one that was worked out [Pa]; null for that. */
  chosen: number | null
  onChosen: (pressure: number) => void
  onSag: (share: number) => void
  onSpacers: (spacers: number) => void
}

function doubtWords({ doubtOf }: StartPressure): string {
  const most = doubtOf[0]?.input
  if (most === 'share') return say('set-up.doubt.share')
  return most === 'mass' ? say('set-up.doubt.mass') : say('set-up.doubt.spring')
}

function StartWith({ inputs, worked, chosen }: { inputs: StartInputs; worked: StartPressure; chosen: number | null }) {
  const workings = () => pressureWorkings(inputs, worked.load)
  const [low, high] = worked.band
  const doubt = { low, high, says: doubtWords(worked) }
  if (chosen === null)
    return (
      <div className="start-with">
        <Figure
          label={say('set-up.start-with')}
          value={worked.pressure}
          kind="pressure"
          size="page"
          workings={workings}
          doubt={doubt}
        />
      </div>
    )
  return (
    <div className="start-with">
      <p className="label">{say('set-up.start-with')}</p>
      <p>
        <QuantityText value={chosen} kind="pressure" size="page" hand />
      </p>
      <p className="book hand">{say('set-up.chosen-now')}</p>
      <p>
        {say('set-up.worked-out-was')} <WorkedOut value={worked.pressure} kind="pressure" workings={workings} />
      </p>
      <DoubtBand value={worked.pressure} kind="pressure" {...doubt} />
    </div>
  )
}

export function Start(props: StartProps) {
  const worked = useMemo(() => workedOut(props.inputs), [props.inputs])
  if (worked instanceof Refusal)
    return (
      <>
        <p className="refusal" role="alert" translate="no">
          {worked.message}
        </p>
        <div className="steppers screen-only">
          <Spacers spacers={props.inputs.spacers} onSpacers={props.onSpacers} />
        </div>
      </>
    )
  return <Stage {...props} worked={worked} />
}

function Stage({ inputs, chosen, onChosen, onSag, onSpacers, worked }: StartProps & { worked: StartPressure }) {
  const { state, stream } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const measures = useMeasures()
  const [asking, setAsking] = useState(false)
  const [trail, setTrail] = useState<Trail>(state.trail ?? { altitude: null, temperature: null })
  const { sheet, spacers } = inputs
  const asItIs: WhatIf = useMemo(() => ({ spacers, oilMore: 0, there: bench }), [spacers])
  const [asked, setAsked] = useState<WhatIf>(asItIs)
  const pressure = chosen ?? worked.pressure
  const friction = useMemo(() => bushingFriction(sheet, worked.sideLoad), [sheet, worked.sideLoad])
  const before = useMemo(() => standing(sheet, pressure, asItIs), [sheet, pressure, asItIs])
  const changed = asking && JSON.stringify(asked) !== JSON.stringify(asItIs)
  const most = friction?.[1] ?? 0
  const answer = useMemo(
    () => (changed ? answered(sheet, pressure, asked, { load: worked.load, friction: most }) : null),
    [changed, sheet, pressure, asked, worked.load, most],
  )
  // What the fork has no room for is answered in words, over the setting as it is.
  const after = answer instanceof Refusal ? null : answer
  const sag = useMemo(() => sagOf(before, worked.load, most), [before, worked.load, most])
  const asNow = useMemo(() => ({ standing: before, outcome: outcomeOf(before, worked.load) }), [before, worked.load])
  const wanted = useMemo(() => targetSag(sheet), [sheet])
  const last = useLastVisit()
  const then = useMemo(() => last && standingThen(sheet, last), [sheet, last])
  const readings = useMemo(
    () => [
      ...pressReadings(last?.measured ?? [], last?.setting.pressure ?? 0, 'last visit'),
      ...pressReadings(state.measured, pressure, 'today'),
      ...sagReadings(state.sag, worked.load),
    ],
    [last, state.measured, state.sag, pressure, worked.load],
  )
  const load = useMemo(() => ({ force: worked.load, doubt: loadDoubt(inputs) }), [worked.load, inputs])
  const maximum = sheet.maxPressure
  const body: EntryBodies['set-up-worked-out'] = {
    pressure,
    band: worked.band,
    temperature: bench.temperature,
    ambient: standardAir(bench.altitude).ambient,
    riderMass: inputs.riderMass,
    frontShare: inputs.frontShare,
    sag: inputs.sag,
    load: worked.load,
    spacers,
  }
  const toWrite =
    maximum && pressure > maximum.value ? (
      <p className="refusal">{say('set-up.over-maximum', { maximum: text(maximum.value, 'Pa') })}</p>
    ) : (
      <Button
        kind={state.setUp ? 'second' : 'main'}
        arrow="forward"
        onPress={() => void write('set-up-worked-out', body)}
      >
        {say('set-up.write-start')}
      </Button>
    )
  return (
    <>
      {assumedPlaces(sheet).some((path) => path.startsWith('spring.')) && (
        <p className="book">
          <b>{say('set-up.assumed')}</b>
        </p>
      )}
      <SetUpChart
        sheet={sheet}
        now={after?.standing ?? before}
        before={after && before}
        lastVisit={then}
        readings={readings}
        load={load}
        sag={after?.sag ?? sag}
        wanted={wanted}
        alone={asking}
        acts={
          !asking && (
            <Button
              kind="second"
              size="row"
              onPress={() => {
                setAsked(asItIs)
                setAsking(true)
              }}
            >
              {say('set-up.what-if')}
            </Button>
          )
        }
        bar={(at) =>
          asking ? (
            <WhatIfBar
              whatIf={asked}
              changed={changed}
              onWhatIf={setAsked}
              onReset={() => setAsked(asItIs)}
              onDone={() => setAsking(false)}
            />
          ) : (
            <div className="steppers screen-only">
              <PressureStep pressure={pressure} measure={measures.pressure} onPressure={onChosen} />
              <Spacers spacers={spacers} onSpacers={onSpacers} />
              <StrokeStep {...at} />
              {toWrite}
            </div>
          )
        }
      >
        {asking ? (
          <WhatIfTable sheet={sheet} load={worked.load} before={asNow} after={answer} />
        ) : (
          <>
            <StartWith inputs={inputs} worked={worked} chosen={chosen} />
            <WhereFrom inputs={inputs} worked={worked} />
          </>
        )}
      </SetUpChart>
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
      <div className="set-up-sections">
        <SagBand
          inputs={inputs}
          standing={before}
          load={{ along: worked.load, across: worked.sideLoad }}
          sag={sag}
          friction={friction}
          wanted={wanted}
          onSag={onSag}
        />
        <Clicks inputs={inputs} pressure={pressure} standing={before} load={worked.load} />
        <Pumps inputs={inputs} pressure={pressure} />
        <There inputs={inputs} pressure={pressure} load={worked.load} trail={trail} onTrail={setTrail} />
      </div>
    </>
  )
}
