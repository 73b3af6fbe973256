/** How damping and clicks were worked out of timed returns. */
import type { ClickSetting } from '@legwork/engine'
import { type ReleasedAt, say } from '@legwork/trade'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import type { Workings } from '../../../figures/workings.tsx'
import { returnQuestion } from './return-asked.ts'
import { type KnownSetting, plainly, type Rider } from './return-known.ts'

export function dampingWorkings(at: ReleasedAt, setting: KnownSetting, path: 'damping' | 'below'): Workings {
  const { spring, pressure, mass, friction, from } = setting
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
              source: from.pressure,
            },
          ]),
      {
        name: say('return.workings.moving'),
        shown: <QuantityText value={mass} kind="mass" digits={2} />,
        source: from.mass,
      },
      {
        name: say('return.workings.friction'),
        shown: <QuantityText value={friction} kind="force" digits={0} />,
        source: from.friction,
      },
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

/** What the wanted damping rests on: the rider's load at the sag, the ratio, and how the damper stands in the bike. */
function riderRows(rider: Rider, pressure: number | null): Workings['inputs'] {
  const { load, ratio } = rider
  return [
    {
      name: say('return.workings.load'),
      shown: <QuantityText value={load} kind="force" digits={0} />,
      source: plainly('worked-out'),
    },
    ...(pressure === null
      ? []
      : [
          {
            name: say('return.workings.ridden-at'),
            shown: <QuantityText value={pressure} kind="pressure" digits={1} />,
            source: plainly('worked-out'),
          },
        ]),
    {
      name: say('return.workings.ratio'),
      shown: <QuantityText value={ratio} kind="number" digits={2} />,
      source: plainly('common-practice'),
    },
    'headAngle' in rider
      ? {
          name: say('return.workings.head-angle'),
          shown: <QuantityText value={rider.headAngle.value} kind="angle" />,
          source: rider.headAngle.source,
        }
      : {
          name: say('return.workings.leverage'),
          shown: <QuantityText value={rider.leverage} kind="number" digits={2} />,
          source: plainly('makers-sheet'),
        },
  ]
}

export function clicksWorkings(
  settings: readonly ClickSetting[],
  wanted: number,
  rider: Rider,
  pressure: number | null,
): Workings {
  const stands = say('headAngle' in rider ? 'return.workings.head-angle' : 'return.workings.leverage.short')
  return {
    title: say('return.workings.clicks'),
    formula: say('return.workings.clicks.formula', {
      m: 'headAngle' in rider ? `F/g·sin(${stands})` : `F/g·${stands}`,
    }),
    inputs: [
      { name: say('return.workings.settings'), shown: <QuantityText value={settings.length} kind="number" /> },
      ...riderRows(rider, pressure),
      {
        name: say('return.workings.wanted'),
        shown: <QuantityText value={wanted} kind="damping" digits={0} />,
        source: plainly('worked-out'),
      },
    ],
    leavesOut: [say('return.workings.oil')],
    asked: { calculation: 'clicks-for-damping', input: { settings, wanted }, path: 'clicks' },
  }
}
