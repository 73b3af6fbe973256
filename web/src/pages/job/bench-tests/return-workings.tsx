/** How damping and clicks were worked out of timed returns. */
import type { ClickSetting } from '@legwork/engine'
import { type ReleasedAt, say } from '@legwork/trade'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import type { Workings } from '../../../figures/workings.tsx'
import { type ReturnSetting, returnQuestion } from './return-asked.ts'

export function dampingWorkings(at: ReleasedAt, setting: ReturnSetting, path: 'damping' | 'below'): Workings {
  const { spring, pressure, mass, friction } = setting
  return {
    title: say('return.workings.damping'),
    formula: say('return.workings.damping.formula'),
    inputs: [
      ...(pressure === null
        ? []
        : [
            {
              name: say('set-up.control.pressure'),
              shown: <QuantityText value={pressure} kind="pressure" digits={1} />,
            },
          ]),
      { name: say('return.workings.moving'), shown: <QuantityText value={mass} kind="mass" /> },
      { name: say('return.workings.friction'), shown: <QuantityText value={friction} kind="force" digits={0} /> },
      {
        name: say('return.workings.stretch'),
        shown: (
          <>
            <QuantityText value={at.from} kind="length" />, <QuantityText value={at.to} kind="length" />
          </>
        ),
      },
      {
        name: say('return.workings.time'),
        shown: <QuantityText value={at.time} kind="duration" measure="s" digits={3} />,
      },
    ],
    leavesOut: [say('return.workings.two-parts'), say('return.workings.oil')],
    asked: { calculation: 'damping-from-return', input: { spring, ...returnQuestion(at, setting) }, path },
  }
}

export function clicksWorkings(settings: readonly ClickSetting[], wanted: number): Workings {
  return {
    title: say('return.workings.clicks'),
    formula: say('return.workings.clicks.formula'),
    inputs: [
      { name: say('return.workings.settings'), shown: <QuantityText value={settings.length} kind="number" /> },
      { name: say('return.workings.wanted'), shown: <QuantityText value={wanted} kind="damping" digits={0} /> },
    ],
    leavesOut: [say('return.workings.oil')],
    asked: { calculation: 'clicks-for-damping', input: { settings, wanted }, path: 'clicks' },
  }
}
