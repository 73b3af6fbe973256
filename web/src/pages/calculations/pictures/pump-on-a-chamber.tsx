/** Before, while and after a pump sits on a chamber: the same air in more room, and what goes with the hose. */
import { say } from '@legwork/trade'
import { Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { numberAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useWritten } from './written.ts'

const states = ['before', 'on', 'off'] as const
const row = 82

/** One teal for air whose strength follows the pressure, as in every section. */
const wash = (pressure: number) => 0.07 + 0.62 * Math.min(1, pressure / 2e6) ** 0.62

export function PumpOnAChamberPicture({ input, output, width }: PictureProps) {
  const written = useWritten()
  const [volume, hose] = [numberAt(input, ['volume']), numberAt(input, ['hoseVolume'])]
  const pressures = {
    before: numberAt(output, ['pressure']),
    on: numberAt(output, ['reading']),
    off: numberAt(output, ['pressureAfter']),
  }
  const [left, gauge] = [0, 26]
  const chamber = Math.min(width * 0.46, 220)
  // Chamber and hose at one scale of volume: the hose is a thin tube as long as it must be, so its length tells.
  const tube = Math.max(14, Math.min(width - chamber - 3 * gauge - 20, (chamber * hose * 5) / Math.max(1e-9, volume)))
  const pen = { stroke: 'var(--ink)', strokeWidth: 1.25 } as const
  return (
    <svg
      width={width}
      height={states.length * row + 6}
      viewBox={`0 0 ${width} ${states.length * row + 6}`}
      overflow="visible"
      role="img"
      aria-label={say('calc.picture.pump')}
    >
      {states.map((state, index) => {
        const top = index * row + 26
        const end = left + chamber
        const isOn = state === 'on'
        const start = isOn ? end : end + 30
        return (
          <g key={state}>
            <Lettering x={left} y={top - 8} fontWeight={600}>
              {say(`calc.picture.pump.${state}`)}
            </Lettering>
            <rect
              x={left + 1}
              y={top}
              width={px(chamber)}
              height={44}
              fill="var(--air)"
              fillOpacity={wash(pressures[state])}
              {...pen}
            />
            <rect x={px(end)} y={top + 16} width={8} height={12} fill="var(--steel)" {...pen} />
            {state === 'before' && (
              <Lettering x={px(left + chamber)} y={top - 8} textAnchor="end" fontSize={14}>
                {written(volume, 'volume')}
              </Lettering>
            )}
            <Lettering x={px(left + chamber / 2)} y={top + 29} textAnchor="middle" fontSize={21}>
              {written(pressures[state], 'pressure')}
            </Lettering>
            {state !== 'before' && (
              <>
                <rect
                  x={px(start + 8)}
                  y={top + 18}
                  width={px(tube)}
                  height={8.8}
                  fill="var(--air)"
                  fillOpacity={isOn ? wash(pressures.on) : 0}
                  {...pen}
                />
                <circle cx={px(start + 8 + tube + gauge)} cy={top + 22} r={gauge} fill="var(--leaf)" {...pen} />
                <path
                  d={`M${px(start + 8 + tube + gauge)} ${top + 22}l${isOn ? 12 : -12} ${isOn ? -12 : 12}`}
                  stroke={isOn ? 'var(--hand)' : 'var(--ink)'}
                  strokeWidth={2}
                />
                <circle cx={px(start + 8 + tube + gauge)} cy={top + 22} r={3} fill="var(--ink)" />
                {isOn && (
                  <Lettering x={px(start + 8 + tube + 2 * gauge + 10)} y={top + 28} fontSize={14}>
                    {say('calc.picture.pump.hose', { volume: written(hose, 'volume') })}
                  </Lettering>
                )}
              </>
            )}
          </g>
        )
      })}
    </svg>
  )
}
