import { type HatchLook, hatchings } from '@legwork/drawing'
import { memo } from 'react'

/** One tile: a line down its middle, a second one across it or beside it. */
function tileOf({ pitch, cross, dashes, staggered }: HatchLook) {
  const height = dashes ? dashes[0] + dashes[1] : pitch
  if (staggered)
    return { width: 2 * pitch, height, lines: [`M${pitch / 2} 0V${height}`, `M${1.5 * pitch} 0V${height}`] }
  if (cross) return { width: pitch, height, lines: [`M0 0V${height}M0 ${pitch / 2}H${pitch}`] }
  return { width: pitch, height, lines: [`M${pitch / 2} 0V${height}`] }
}

/** Hatchings after ISO 128 as patterns; their names start with the drawing's id. */
export const Hatchings = memo(function Hatchings({ id }: { id: string }) {
  return Object.entries(hatchings).map(([name, look]) => {
    const { width, height, lines } = tileOf(look)
    return (
      <pattern
        key={name}
        id={`${id}-${name}`}
        width={width}
        height={height}
        patternUnits="userSpaceOnUse"
        patternTransform={`rotate(${look.turn})`}
      >
        {lines.map((line, index) => (
          <path
            key={line}
            d={line}
            stroke="var(--ink)"
            strokeWidth={0.3}
            strokeDasharray={look.dashes?.join(' ')}
            strokeDashoffset={index === 0 ? 0 : height / 2}
            fill="none"
          />
        ))}
      </pattern>
    )
  })
})
