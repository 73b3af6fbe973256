import type { Hatching } from '@legwork/drawing'
import { memo } from 'react'

interface HatchLook {
  pitch: number
  turn: number
  cross?: boolean
  dashes?: string
}
const hatchings: Record<Hatching, HatchLook> = {
  cast: { pitch: 2.6, turn: 45 },
  'cast-neighbour': { pitch: 2.6, turn: -45 },
  turned: { pitch: 2, turn: -45 },
  close: { pitch: 1.3, turn: 45 },
  spacer: { pitch: 3.4, turn: -45 },
  rubber: { pitch: 2, turn: 45, cross: true },
  foam: { pitch: 1.6, turn: 45, cross: true, dashes: '0.4 1.2' },
  liquid: { pitch: 2.2, turn: 90, dashes: '2.4 1.6' },
}

/** Hatchings after ISO 128 as patterns; their names start with the drawing's id. */
export const Hatchings = memo(function Hatchings({ id }: { id: string }) {
  return Object.entries(hatchings).map(([name, { pitch, turn, cross, dashes }]) => (
    <pattern
      key={name}
      id={`${id}-${name}`}
      width={pitch}
      height={dashes ? 4 : pitch}
      patternUnits="userSpaceOnUse"
      patternTransform={`rotate(${turn})`}
    >
      <path
        d={cross ? `M0 0V4M0 ${pitch / 2}H${pitch}` : `M${pitch / 2} 0V4`}
        stroke="var(--ink)"
        strokeWidth={0.3}
        strokeDasharray={dashes}
        fill="none"
      />
    </pattern>
  ))
})
