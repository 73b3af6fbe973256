/** One measured point, its load taken as right: it tells the negative chamber of this very fork. */
import { type Calibration, calibrate, Refusal } from '@legwork/engine'
import { nextRevision, type Sheet, say } from '@legwork/trade'
import { useMemo, useState } from 'react'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import { useQuantityWords } from '../../../figures/quantity-words.ts'
import { WorkedOut, type Workings } from '../../../figures/workings.tsx'
import { Button } from '../../../ui/button.tsx'
import { ValueRow } from '../../../ui/ledger.tsx'
import { useJobView } from '../job-view.tsx'
import { springRows } from '../spring-rows.tsx'
import { airSpringOf, loadOf, type SagRead, type StartInputs } from '../start-pressure.ts'

interface CalibratedProps {
  inputs: StartInputs
  read: SagRead
  mean: number
}

const pointOf = ({ inputs, read, mean }: CalibratedProps) => ({
  pressure: read.pressure,
  load: loadOf(inputs).load,
  stroke: mean,
})

function calibrateWorkings(asked: CalibratedProps): Workings {
  const { sheet, spacers, ambient } = asked.inputs
  const spring = airSpringOf(sheet, spacers)
  const point = pointOf(asked)
  return {
    title: say('set-up.calibrate.value'),
    formula: 'F(stroke; V⁻) = load ± 10 N',
    inputs: [
      { name: say('set-up.control.pressure'), shown: <QuantityText value={point.pressure} kind="pressure" /> },
      { name: say('set-up.row.load'), shown: <QuantityText value={point.load} kind="force" digits={0} /> },
      { name: say('set-up.mean'), shown: <QuantityText value={point.stroke} kind="length" /> },
      ...springRows(sheet, spring),
    ],
    leavesOut: [say('set-up.leaves-out.ideal')],
    asked: { calculation: 'calibrate', input: { spring, points: [point], ambient }, path: 'value' },
  }
}

/** The sheet with this fork's own chamber on it. */
const kept = (sheet: Sheet, value: number, person: string): Sheet => ({
  ...sheet,
  revision: nextRevision(sheet.revision),
  spring: {
    ...sheet.spring,
    negativeVolume: {
      value,
      source: {
        kind: 'measured-here',
        document: null,
        revision: null,
        page: null,
        person,
        at: new Date().toISOString(),
        instrument: null,
      },
    },
  },
})

export function Calibrated(asked: CalibratedProps) {
  const { sheet, hands, writeSheet } = useJobView()
  const text = useQuantityWords()
  const [revision, setRevision] = useState<string | null>(null)
  const { inputs, read, mean } = asked
  const found = useMemo((): Calibration | null => {
    const point = { pressure: read.pressure, load: loadOf(inputs).load, stroke: mean }
    try {
      return calibrate(airSpringOf(inputs.sheet, inputs.spacers), { points: [point], ambient: inputs.ambient })
    } catch (trouble) {
      if (trouble instanceof Refusal) return null
      throw trouble
    }
  }, [inputs, read.pressure, mean])
  const onSheet = sheet?.spring.negativeVolume?.value
  if (!found || !sheet || onSheet === undefined) return null
  const [low, high] = found.band
  const differs = onSheet < low || onSheet > high
  const keep = async () => {
    const next = kept(sheet, found.value, hands.id)
    await writeSheet(next)
    setRevision(next.revision)
  }
  return (
    <>
      <h3>{say('set-up.calibrate')}</h3>
      <p className="book">{say('set-up.calibrate.note')}</p>
      <ValueRow
        name={say('set-up.calibrate.value')}
        note={say('set-up.calibrate.band', {
          low: text(low, 'volume', 1),
          high: text(high, 'volume', 1),
          sheet: text(onSheet, 'volume', 1),
        })}
      >
        <WorkedOut value={found.value} kind="volume" digits={1} workings={() => calibrateWorkings(asked)} />
      </ValueRow>
      {revision !== null ? (
        <p className="book">{say('set-up.calibrate.kept', { revision })}</p>
      ) : differs ? (
        <Button kind="second" size="row" onPress={() => void keep()}>
          {say('set-up.calibrate.act')}
        </Button>
      ) : (
        <p className="book">{say('set-up.calibrate.cannot')}</p>
      )}
    </>
  )
}
