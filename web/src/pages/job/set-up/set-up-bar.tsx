/** The bar at the thumb: pressure, spacers and stroke, or what a what-if changes. */
import { say } from '@legwork/trade'
import type { ReactNode } from 'react'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import { Button } from '../../../ui/button.tsx'
import { Stepper } from '../../../ui/stepper.tsx'
import { bench, type WhatIf } from './what-if.ts'

const psi = 6894.757293168
const bar = 1e5

interface StepProps {
  label: string
  value: ReactNode
  change: (by: 1 | -1) => void
  atLeast?: boolean
  atMost?: boolean
}

function Step({ label, value, change, ...ends }: StepProps) {
  return (
    <Stepper
      label={label}
      value={value}
      less={say('set-up.less', { what: label })}
      more={say('set-up.more', { what: label })}
      onLess={() => change(-1)}
      onMore={() => change(1)}
      {...ends}
    />
  )
}

export function Spacers({ spacers, onSpacers }: { spacers: number; onSpacers: (spacers: number) => void }) {
  return (
    <Step
      label={say('set-up.control.spacers')}
      value={<span translate="no">{spacers}</span>}
      change={(by) => onSpacers(Math.max(0, spacers + by))}
      atLeast={spacers === 0}
    />
  )
}

/** One psi, or a tenth of a bar for who reads bar. */
export function PressureStep({
  pressure,
  measure,
  onPressure,
}: {
  pressure: number
  measure: 'psi' | 'bar'
  onPressure: (pressure: number) => void
}) {
  const step = measure === 'bar' ? bar / 10 : psi
  return (
    <Step
      label={say('set-up.control.pressure')}
      value={<QuantityText value={pressure} kind="pressure" />}
      change={(by) => onPressure(Math.max(0, pressure + by * step))}
    />
  )
}

export function StrokeStep({
  stroke,
  fullStroke,
  onStroke,
}: {
  stroke: number
  fullStroke: number
  onStroke: (stroke: number) => void
}) {
  const to = (by: number) => Number(Math.min(fullStroke, Math.max(0, stroke + by * 0.001)).toPrecision(9))
  return (
    <Step
      label={say('set-up.control.stroke')}
      value={<QuantityText value={stroke} kind="length" />}
      change={(by) => onStroke(to(by))}
      atLeast={stroke <= 0}
      atMost={stroke >= fullStroke}
    />
  )
}

/** Spacers, bath oil, altitude, temperature: each press is seen in the curve and the drawing at once. */
export function WhatIfBar({
  whatIf,
  changed,
  onWhatIf,
  onReset,
  onDone,
}: {
  whatIf: WhatIf
  changed: boolean
  onWhatIf: (whatIf: WhatIf) => void
  onReset: () => void
  onDone: () => void
}) {
  const { spacers, oilMore, there } = whatIf
  return (
    <div className="steppers what-if-bar screen-only">
      <Spacers spacers={spacers} onSpacers={(next) => onWhatIf({ ...whatIf, spacers: next })} />
      <Step
        label={say('set-up.what-if.oil')}
        value={<QuantityText value={oilMore} kind="volume" digits={0} />}
        change={(by) => onWhatIf({ ...whatIf, oilMore: Math.round(oilMore * 1e6 + by * 5) / 1e6 })}
        atLeast={oilMore <= -5e-6}
        atMost={oilMore >= 80e-6}
      />
      <Step
        label={say('set-up.what-if.altitude')}
        value={<QuantityText value={there.altitude} kind="altitude" digits={0} />}
        change={(by) => onWhatIf({ ...whatIf, there: { ...there, altitude: there.altitude + by * 150 } })}
        atLeast={there.altitude <= -300}
        atMost={there.altitude >= 4500}
      />
      <Step
        label={say('set-up.what-if.temperature')}
        value={<QuantityText value={there.temperature} kind="temperature" digits={0} />}
        change={(by) => onWhatIf({ ...whatIf, there: { ...there, temperature: there.temperature + by * 2.5 } })}
        atLeast={there.temperature <= bench.temperature - 40}
        atMost={there.temperature >= bench.temperature + 40}
      />
      <Button kind="second" onPress={changed ? onReset : onDone}>
        {changed ? say('set-up.what-if.reset') : say('set-up.what-if.done')}
      </Button>
    </div>
  )
}
