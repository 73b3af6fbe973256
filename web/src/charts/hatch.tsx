import { useId } from 'react'

interface HatchProps {
  id: string
  /** Distance of the lines in px. */
  pitch: number
  /** Degrees; 45 rises to the left, -45 to the right. */
  angle?: number
  width?: number
  opacity?: number
}

/** Parallel lines as a fill: watch zones, doubt, work still to do. */
export function Hatch({ id, pitch, angle = 45, width = 1, opacity = 1 }: HatchProps) {
  return (
    <pattern id={id} patternUnits="userSpaceOnUse" width={pitch} height={pitch} patternTransform={`rotate(${angle})`}>
      <path d={`M0 0V${pitch}`} stroke="var(--ink)" strokeWidth={width} strokeOpacity={opacity} />
    </pattern>
  )
}

/** A name for a pattern that no other drawing on the page has, safe inside url(#…). */
export function usePatternId(): string {
  return `p${useId().replace(/[^a-zA-Z0-9]/g, '')}`
}
