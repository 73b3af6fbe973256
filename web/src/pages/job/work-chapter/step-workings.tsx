/** How the figures of a step were worked out. */
import { pressureForSag } from '@legwork/engine'
import { type JobState, type Sheet, type Source, say, sayMessage } from '@legwork/trade'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import type { Workings } from '../../../figures/workings.tsx'
import { Shown } from '../readings.tsx'
import { springRows } from '../spring-rows.tsx'
import { airSpringOf } from '../start-pressure.ts'
import type { Pump, StepFigure } from '../step-figure.ts'

const millimetres = (metres: number): string => String(Math.round(metres * 1e4) / 10)

/** What a wrench is set to. */
export function wrenchWorkings({ value, wrench }: Extract<StepFigure, { kind: 'torque' }>): Workings {
  const { length, adapterLength } = wrench
  return {
    title: say('work.set-wrench', { wrench: wrench.name }),
    formula:
      adapterLength > 0
        ? say('work.wrench-sum', {
            wanted: value.value.toFixed(1),
            length: millimetres(length),
            adapter: millimetres(adapterLength),
          })
        : say('work.wrench-plain'),
    inputs: [
      {
        name: sayMessage(value.label),
        shown: <Shown value={value.value} measure="N·m" />,
        ...(value.source ? { source: value.source } : {}),
      },
      { name: say('work.wrench-grip', { wrench: wrench.name }), shown: <Shown value={length} measure="m" /> },
      { name: say('work.wrench-adapter'), shown: <Shown value={adapterLength} measure="m" /> },
    ],
    leavesOut: [say('work.wrench-leaves-out')],
    asked: { calculation: 'torque', input: { wanted: value.value, wrenchLength: length, adapterLength }, path: 'set' },
  }
}

const writtenBy = (state: NonNullable<JobState['setUp']>): Source => ({
  kind: 'worked-out',
  document: null,
  revision: null,
  page: null,
  person: state.person,
  at: state.at,
  instrument: null,
})

/** Whether the pressure that was written down is the one that was worked out, and not one chosen by hand. */
export function isWorkedOut(setUp: NonNullable<JobState['setUp']>, sheet: Sheet): boolean {
  const { load, sag, ambient, spacers, pressure } = setUp
  const answer = pressureForSag(airSpringOf(sheet, spacers), { load, sag, ambient })
  return Math.abs(answer.pressure - pressure) < 1e-6 * pressure
}

/** What is filled at a step: a share of the pressure for the wanted sag, and the pump's own error where it is the gauge's. */
export function fillWorkings(
  setUp: NonNullable<JobState['setUp']>,
  sheet: Sheet,
  figure: Extract<StepFigure, { kind: 'air' }>,
  pump: Pump | null,
): Workings {
  const { load, sag, ambient, spacers, pressure } = setUp
  const spring = airSpringOf(sheet, spacers)
  const share = figure.value.value / pressure
  const offset = pump?.offset ?? 0
  const because = [
    ...(share === 1 ? [] : [sayMessage(figure.value.label)]),
    ...(pump && offset !== 0
      ? [
          say(offset > 0 ? 'work.pump-high' : 'work.pump-low', {
            pump: pump.name,
            percent: Math.round(Math.abs(offset) * 1000) / 10,
          }),
        ]
      : []),
  ]
  return {
    title: say('set-up.where-from-plain'),
    formula: say('set-up.formula.balance'),
    inputs: [
      {
        name: say('set-up.row.load'),
        shown: <QuantityText value={load} kind="force" digits={0} />,
        source: writtenBy(setUp),
      },
      { name: say('set-up.sag-wanted'), shown: <QuantityText value={sag} kind="fraction" /> },
      ...springRows(sheet, spring),
    ],
    leavesOut: [say('set-up.leaves-out.friction'), say('set-up.leaves-out.ideal')],
    asked: {
      calculation: 'pressure-for-sag',
      input: { spring, load, sag, ambient },
      path: 'pressure',
      ...(because.length > 0 ? { times: { by: share * (1 + offset), because: because.join(', ') } } : {}),
    },
  }
}
