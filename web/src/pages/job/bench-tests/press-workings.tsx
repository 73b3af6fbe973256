/** How the figures of a press were worked out. */
import { say } from '@legwork/trade'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import type { Workings } from '../../../figures/workings.tsx'
import type { OffSheet, PressAsked } from './press-asked.ts'

export function frictionWorkings(asked: PressAsked): Workings {
  const { presses, forceSd, strokeSd } = asked
  const stops = presses.reduce((sum, { readings }) => sum + readings.length, 0)
  return {
    title: say('press.workings'),
    formula: say('press.workings.formula'),
    inputs: [
      ...presses.flatMap(({ pressure }) =>
        pressure === undefined
          ? []
          : [
              {
                name: say('press.workings.filled'),
                shown: <QuantityText value={pressure} kind="pressure" digits={1} />,
              },
            ],
      ),
      { name: say('press.workings.stops'), shown: <QuantityText value={stops} kind="number" /> },
      { name: say('press.workings.force-doubt'), shown: <QuantityText value={forceSd} kind="force" /> },
      { name: say('press.workings.stroke-doubt'), shown: <QuantityText value={strokeSd} kind="length" digits={1} /> },
    ],
    leavesOut: [say('press.workings.one-fault'), say('press.workings.warm'), say('set-up.leaves-out.ideal')],
    asked: { calculation: 'press-test', input: { ...asked }, path: 'friction' },
  }
}

/** The sheet's force at one stop: at the end of a stroke that goes no further. */
export function sheetForceWorkings({ spring }: PressAsked, { stroke, pressure }: OffSheet): Workings {
  return {
    title: say('press.spring-load'),
    formula: 'F(x; p)',
    inputs: [
      { name: say('press.stop'), shown: <QuantityText value={stroke} kind="length" /> },
      ...(pressure === null
        ? []
        : [
            { name: say('press.workings.filled'), shown: <QuantityText value={pressure} kind="pressure" digits={1} /> },
          ]),
    ],
    leavesOut: [say('set-up.leaves-out.ideal')],
    asked: {
      calculation: 'spring-curve',
      input: { spring: { ...spring, stroke }, ...(pressure === null ? {} : { pressure }), points: 2 },
      path: 'points[1].force',
    },
  }
}
