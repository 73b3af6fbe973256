/** How the figures of a measured sag were worked out. */
import { type Sheet, say } from '@legwork/trade'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import type { Workings } from '../../../figures/workings.tsx'
import { springRows } from '../spring-rows.tsx'
import { airSpringOf, type MeasuredSag, type SagRead } from '../start-pressure.ts'

const rows = (read: SagRead): Workings['inputs'] => [
  { name: say('set-up.from-above'), shown: <QuantityText value={read.fromAbove} kind="length" /> },
  { name: say('set-up.from-below'), shown: <QuantityText value={read.fromBelow} kind="length" /> },
  { name: say('set-up.control.pressure'), shown: <QuantityText value={read.pressure} kind="pressure" /> },
]

/** Half the difference, in words, times the stiffness at the mean. */
export function measuredFriction(sheet: Sheet, read: SagRead, { load }: MeasuredSag, says: string): Workings {
  const spring = airSpringOf(sheet, read.spacers)
  const half = Math.abs(read.fromAbove - read.fromBelow) / 2
  return {
    title: say('set-up.friction'),
    formula: '½·|x₁ − x₂|·dF/dx',
    inputs: [...rows(read), ...springRows(sheet, spring)],
    leavesOut: [say('set-up.leaves-out.ideal')],
    asked: {
      calculation: 'sag',
      input: { spring, pressure: read.pressure, load, ambient: read.ambient },
      path: 'rate',
      times: { by: half, because: say('set-up.half-difference', { half: says }) },
    },
  }
}

/** What the spring holds at the mean: the force at the end of a stroke that goes no further. */
export function measuredLoad(sheet: Sheet, read: SagRead, { mean }: MeasuredSag): Workings {
  const spring = airSpringOf(sheet, read.spacers)
  return {
    title: say('set-up.real-load'),
    formula: 'F(mean; p)',
    inputs: [...rows(read), ...springRows(sheet, spring)],
    leavesOut: [say('set-up.leaves-out.ideal')],
    asked: {
      calculation: 'spring-curve',
      input: { spring: { ...spring, stroke: mean }, pressure: read.pressure, ambient: read.ambient, points: 2 },
      path: 'points[1].force',
    },
  }
}

/** The pressure whose sag under that load is the wanted one. */
export function measuredPressure(sheet: Sheet, read: SagRead, { load }: MeasuredSag): Workings {
  const spring = airSpringOf(sheet, read.spacers)
  const { sag, ambient } = read
  return {
    title: say('set-up.where-from-plain'),
    formula: say('set-up.formula.balance'),
    inputs: [
      { name: say('set-up.real-load'), shown: <QuantityText value={load} kind="force" digits={0} /> },
      { name: say('set-up.sag-wanted'), shown: <QuantityText value={sag} kind="fraction" /> },
      ...springRows(sheet, spring),
    ],
    leavesOut: [say('set-up.leaves-out.ideal')],
    asked: { calculation: 'pressure-for-sag', input: { spring, load, sag, ambient }, path: 'pressure' },
  }
}
