/** How the reading that a tight chamber would show was worked out. */
import type { LeakQuestion } from '@legwork/engine'
import { say } from '@legwork/trade'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import type { Workings } from '../../../figures/workings.tsx'
import type { Pump } from '../step-figure.ts'

/** The first reading at the second one's temperature, less what the hose takes when it is put on again. */
export function leakWorkings(asked: { question: LeakQuestion; error: number }, pump: Pump | null): Workings {
  const { question, error } = asked
  const { volume, hoseVolume = 0, start, end } = question
  const percent = Math.round(Math.abs(error - 1) * 1000) / 10
  return {
    title: say('prove.leak-down.should'),
    formula: 'reading = ((p + p_a)·T₂/T₁ − p_a)·V/(V + V_hose)',
    inputs: [
      {
        name: say('prove.leak-down-start.reading'),
        shown: <QuantityText value={start.reading} kind="pressure" digits={1} />,
      },
      { name: say('set-up.row.chamber'), shown: <QuantityText value={volume} kind="volume" /> },
      { name: say('set-up.row.hose'), shown: <QuantityText value={hoseVolume} kind="volume" /> },
      {
        name: say('set-up.row.here'),
        shown: (
          <>
            <QuantityText value={start.temperature} kind="temperature" />,{' '}
            <QuantityText value={end.temperature} kind="temperature" />
          </>
        ),
      },
    ],
    leavesOut: [say('set-up.leaves-out.hose')],
    asked: {
      calculation: 'leak-down',
      input: { ...question },
      path: 'expectedReading',
      ...(error === 1
        ? {}
        : {
            times: {
              by: error,
              because: say(error > 1 ? 'work.pump-high' : 'work.pump-low', { pump: pump?.name ?? '', percent }),
            },
          }),
    },
  }
}

/** What was in the chamber when it was read again, told at the first reading's temperature. */
export function insideWorkings(asked: { question: LeakQuestion; error: number }, pump: Pump | null): Workings {
  const { question } = asked
  const { inputs, leavesOut } = leakWorkings(asked, pump)
  return {
    title: say('prove.leak-down.inside'),
    formula: 'p = ((reading·(V + V_hose)/V + p_a)·T₁/T₂ − p_a)',
    inputs: [
      ...inputs,
      {
        name: say('prove.leak-down-end.reading'),
        shown: <QuantityText value={question.end.reading} kind="pressure" digits={1} />,
      },
    ],
    leavesOut,
    asked: { calculation: 'leak-down', input: { ...question }, path: 'pressureEnd' },
  }
}
