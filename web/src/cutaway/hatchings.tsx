import { hatchings } from '@legwork/drawing'
import { memo } from 'react'

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
        strokeDasharray={dashes?.join(' ')}
        fill="none"
      />
    </pattern>
  ))
})
