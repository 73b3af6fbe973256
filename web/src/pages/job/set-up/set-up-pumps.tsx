/** What each pump will show when it is put on afterwards, the rider's own among them. */
import { type Rider, say } from '@legwork/trade'
import { useState } from 'react'
import { WorkedOut } from '../../../figures/workings.tsx'
import { useWriteRegister } from '../../../offline/hooks.tsx'
import { Button } from '../../../ui/button.tsx'
import { Choice } from '../../../ui/choice.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { pumpsOf, useJobView } from '../job-view.tsx'
import { ReadingField } from '../readings.tsx'
import { offsetAgainst, pumpShows, type StartInputs, usualHose } from '../start-pressure.ts'
import type { Pump } from '../step-figure.ts'
import { type PumpOf, pumpWorkings } from './set-up-workings.tsx'

interface PumpsProps {
  inputs: StartInputs
  pressure: number
}

function PumpRow({ inputs, pressure, pump }: PumpsProps & { pump: PumpOf }) {
  const { sheet, spacers } = inputs
  return (
    <ValueRow name={say('set-up.pumps', { pump: pump.name })}>
      <WorkedOut
        value={pumpShows(sheet, spacers, pressure, pump)}
        kind="pressure"
        size="row-small"
        workings={() => pumpWorkings(sheet, spacers, pressure, pump)}
      />
    </ValueRow>
  )
}

/** The rider's pump right after one of ours: what it reads differently is kept with the rider. */
function OwnPump({ inputs, rider, pumps }: { inputs: StartInputs; rider: Rider; pumps: readonly Pump[] }) {
  const writeRegister = useWriteRegister()
  const [chosen, setChosen] = useState<string | null>(pumps[0]?.id ?? null)
  const [ours, setOurs] = useState<number | null>(null)
  const [theirs, setTheirs] = useState<number | null>(null)
  const pump = pumps.find((one) => one.id === chosen)
  if (!pump) return null
  const keep = () => {
    if (ours === null || theirs === null) return
    const offset = offsetAgainst(inputs.sheet, inputs.spacers, { ours, theirs }, pump)
    void writeRegister('riders', { ...rider, pump: { offset, hoseVolume: usualHose } })
    setOurs(null)
    setTheirs(null)
  }
  return (
    <form
      className="own-pump"
      onSubmit={(event) => {
        event.preventDefault()
        keep()
      }}
    >
      <h3>{say('set-up.own-pump')}</h3>
      <p className="book">
        {rider.pump
          ? say('set-up.own-pump.kept', {
              percent: Math.round(Math.abs(rider.pump.offset) * 1000) / 10,
              high: rider.pump.offset >= 0 ? 1 : 2,
            })
          : say('set-up.own-pump.note')}
      </p>
      {pumps.length > 1 && (
        <Choice
          label={say('set-up.setting.pump')}
          options={pumps.map((one) => ({ value: one.id, label: <span translate="no">{one.name}</span> }))}
          value={chosen}
          onChange={setChosen}
        />
      )}
      <div className="trail">
        <ReadingField
          label={say('set-up.own-pump.ours', { pump: pump.name })}
          measure="Pa"
          value={ours}
          onChange={setOurs}
        />
        <ReadingField label={say('set-up.own-pump.theirs')} measure="Pa" value={theirs} onChange={setTheirs} />
        <Button kind="second" size="row" type="submit">
          {say('set-up.own-pump.act')}
        </Button>
      </div>
    </form>
  )
}

export function Pumps(asked: PumpsProps) {
  const { instruments, rider } = useJobView()
  const pumps = pumpsOf(instruments)
  return (
    <SideHead place="above" title={say('set-up.pumps-title')}>
      {pumps.map((pump) => (
        <PumpRow key={pump.id} {...asked} pump={pump} />
      ))}
      {rider?.pump && <PumpRow {...asked} pump={{ ...rider.pump, name: say('set-up.own-pump.name') }} />}
      {rider && <OwnPump inputs={asked.inputs} rider={rider} pumps={pumps} />}
    </SideHead>
  )
}
