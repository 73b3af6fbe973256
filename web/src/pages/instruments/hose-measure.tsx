/** The hose of a pump out of three readings, attached again and again. */
import { Refusal } from '@legwork/engine'
import { commonPractice, type HoseFound, hoseReadings, type Instrument, measureHose, say } from '@legwork/trade'
import { useState } from 'react'
import { Figure } from '../../figures/figure.tsx'
import { QuantityInput } from '../../figures/quantity-input.tsx'
import { QuantityText } from '../../figures/quantity-text.tsx'
import type { Workings } from '../../figures/workings.tsx'
import { useHands, useStation } from '../../offline/hooks.tsx'
import { Button } from '../../ui/button.tsx'
import { SideHead } from '../../ui/ledger.tsx'
import { HoseChamber, useChamber } from './hose-chamber.tsx'

type Gauge = Extract<Instrument, { kind: 'pump' }> | Extract<Instrument, { kind: 'gauge' }>

function hoseWorkings(readings: readonly number[], volume: number, { id, resolution }: Gauge): Workings {
  return {
    title: say('hose.found'),
    formula: 'V_hose = V·(1/r − 1), r = (p₂/p₁ + p₃/p₂)/2',
    inputs: [
      ...readings.map((reading, index) => ({
        name: say('hose.reading', { n: index + 1 }),
        shown: <QuantityText value={reading} kind="pressure" hand />,
        source: { ...commonPractice, kind: 'measured-here' as const, instrument: id },
      })),
      { name: say('hose.chamber'), shown: <QuantityText value={volume} kind="volume" digits={1} /> },
      { name: say('instrument.resolution'), shown: <QuantityText value={resolution} kind="pressure" /> },
    ],
    leavesOut: [say('hose.leaves-out')],
    asked: { calculation: 'hose-ratio', input: { readings, volume, gaugeResolution: resolution }, path: 'hoseVolume' },
  }
}

function foundIn(readings: readonly number[], volume: number, resolution: number): HoseFound | string {
  try {
    return measureHose(readings, volume, resolution)
  } catch (reason) {
    if (!(reason instanceof Refusal)) throw reason
    const [first] = reason.errors
    return first ? say('hose.refused', { came: first.came, allowed: first.allowed, next: first.next }) : reason.message
  }
}

export function HoseMeasure({ gauge, onKeep }: { gauge: Gauge; onKeep: (gauge: Gauge) => void }) {
  const { person } = useHands()
  const station = useStation()
  const chamber = useChamber()
  const [typed, setTyped] = useState<readonly (number | null)[]>(Array<null>(hoseReadings).fill(null))
  const readings = typed.filter((one) => one !== null)
  const { volume, unit } = chamber.chamber
  const found = readings.length === hoseReadings && volume !== null ? foundIn(readings, volume, gauge.resolution) : null
  const keep = () => {
    if (!found || typeof found === 'string' || volume === null || !person) return
    const { hoseVolume, band } = found
    onKeep({
      ...gauge,
      hoseVolume,
      hose: { readings, volume, unit, band, person: person.id, at: station.now() },
    })
    setTyped(Array<null>(hoseReadings).fill(null))
  }
  return (
    <SideHead place="above" title={say('hose.title')} note={say('hose.note')}>
      <div className="hose-form">
        <p>{say('hose.how')}</p>
        <p className="book">
          <b>{say('hose.caution')}</b>
        </p>
        <HoseChamber of={chamber} />
        <div className="fields">
          {typed.map((value, index) => (
            <QuantityInput
              // biome-ignore lint/suspicious/noArrayIndexKey: a reading is known by when it was taken
              key={index}
              label={say('hose.reading', { n: index + 1 })}
              kind="pressure"
              value={value}
              onChange={(next) => setTyped(typed.map((one, at) => (at === index ? next : one)))}
            />
          ))}
        </div>
        <div role="status">
          {typeof found === 'string' && <p className="refusal">{found}</p>}
          {found && typeof found !== 'string' && volume !== null && (
            <Figure
              label={say('hose.found')}
              value={found.hoseVolume}
              kind="volume"
              digits={1}
              size="row-large"
              workings={() => hoseWorkings(readings, volume, gauge)}
              doubt={{ low: found.band[0], high: found.band[1], says: say('hose.doubt') }}
            />
          )}
        </div>
        {found && typeof found !== 'string' && (
          <Button kind="second" onPress={keep}>
            {say('hose.keep')}
          </Button>
        )}
      </div>
    </SideHead>
  )
}

/** Who measured the hose, when, and how sure it is. */
export function HoseKnown({ gauge }: { gauge: Gauge }) {
  const { hose } = gauge
  return (
    <Figure
      label={say('hose.found')}
      value={gauge.hoseVolume}
      kind="volume"
      digits={1}
      size="row-large"
      source={
        hose
          ? { ...commonPractice, kind: 'measured-here', person: hose.person, at: hose.at }
          : { ...commonPractice, document: say('instrument.believed') }
      }
      {...(hose
        ? {
            doubt: {
              low: hose.band[0],
              high: hose.band[1],
              says: say('hose.measured', { n: hose.readings.length }),
            },
          }
        : {})}
    />
  )
}
