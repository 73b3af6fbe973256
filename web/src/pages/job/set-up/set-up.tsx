/** Set up: the pressure to start from and where it comes from, what the pump will show, and then measured sag. */
import { standardAir } from '@legwork/engine'
import { middleShare, postureOf, say } from '@legwork/trade'
import { useMemo, useState } from 'react'
import { useJobView } from '../job-view.tsx'
import { missingForSpring } from '../sheet-fields.ts'
import { SheetFillIn } from '../sheet-fill-in.tsx'
import type { StartInputs } from '../start-pressure.ts'
import { type Taken, take } from './offered-pressure.ts'
import { MeasuredSag } from './set-up-measured.tsx'
import { SetUpOther } from './set-up-other.tsx'
import { Setting } from './set-up-setting.tsx'
import { Start } from './set-up-start.tsx'
import { StartCard } from './start-card.tsx'

const seaLevel = standardAir(0).ambient

/** What the numbers need; where something is not known, its names. */
function useInputs(sag: number, spacers: number): StartInputs | { missing: string[] } {
  const { sheet, rider, bike } = useJobView()
  return useMemo(() => {
    const missing: string[] = []
    if (!rider || rider.mass === null) missing.push(say('set-up.missing.mass'))
    if (!bike || bike.headAngle === null) missing.push(say('set-up.missing.head-angle'))
    if (!bike || bike.frontMass === null) missing.push(say('set-up.missing.front-mass'))
    if (!sheet || missingForSpring(sheet).length > 0) missing.push(say('set-up.missing.sheet'))
    if (!sheet || rider?.mass == null || bike?.headAngle == null || bike.frontMass === null || missing.length > 0)
      return { missing }
    return {
      sheet,
      spacers,
      riderMass: rider.mass,
      // Nobody weighed it: what is usual in the posture that was named, as doubtful as that is.
      frontShare: rider.frontShare ?? middleShare(postureOf(rider.posture)),
      frontMass: bike.frontMass,
      headAngle: bike.headAngle,
      sag,
      ambient: seaLevel,
    }
  }, [sheet, rider, bike, sag, spacers])
}

function Missing({ missing }: { missing: readonly string[] }) {
  const { sheet } = useJobView()
  return (
    <div>
      <p>{say('set-up.missing', { what: missing.join(', ') })}</p>
      <p className="book">{say('set-up.missing.note')}</p>
      {sheet && missingForSpring(sheet).length > 0 && <SheetFillIn sheet={sheet} fields={missingForSpring(sheet)} />}
    </div>
  )
}

export function SetUp() {
  const { sheet } = useJobView()
  return sheet && sheet.kind !== 'fork-air' ? <SetUpOther sheet={sheet} /> : <SetUpAirFork />
}

function SetUpAirFork() {
  const { state, sheet, rider } = useJobView()
  const [sag, setSag] = useState(state.setUp?.sag ?? 0.2)
  const [spacers, setSpacers] = useState(state.setUp?.spacers ?? sheet?.spacers?.value ?? 0)
  const [chosen, setChosen] = useState<number | null>(null)
  const [taken, setTaken] = useState<Taken | null>(null)
  const found = useInputs(sag, spacers)
  const inputs = 'missing' in found ? null : found
  // Nobody to work it out for, or nothing to hang it on: a pressure for each rider instead.
  const card = inputs === null && sheet !== null && missingForSpring(sheet).length === 0
  return (
    <div>
      {inputs && (
        <Start
          inputs={inputs}
          chosen={chosen}
          onChosen={setChosen}
          onSag={(share) => {
            setSag(share)
            setChosen(null)
          }}
          onSpacers={(count) => {
            setSpacers(count)
            setChosen(null)
          }}
        />
      )}
      {card && <StartCard sheet={sheet} />}
      {(!card || rider) && 'missing' in found && <Missing missing={found.missing} />}
      <div className="two-columns">
        {inputs && (
          <div>
            <MeasuredSag inputs={inputs} onUse={(pressure) => setTaken((before) => take(pressure, state, before))} />
          </div>
        )}
        <div>
          <Setting inputs={inputs} spacers={spacers} taken={taken} />
        </div>
      </div>
    </div>
  )
}
