import type { ReactNode } from 'react'

/** Signs after ISO 3864-1: prohibition (round, red bar), mandatory (blue disc), warning (yellow triangle). */
export type Sign = 'no-pump' | 'prohibition' | 'goggles' | 'warning'

// The signs keep their own white ground and black in both themes and on paper.
const white = 'var(--safety-ground, #fff)'
const black = 'var(--safety-ink, #111)'

const prohibition = (pictogram: ReactNode) => (
  <>
    <circle cx="50" cy="50" r="49" fill={white} />
    {pictogram}
    <g fill="none" stroke="var(--safety-red)" strokeWidth="10">
      <circle cx="50" cy="50" r="41" />
      <path d="M21 21l58 58" />
    </g>
  </>
)

const drawings: Record<Sign, ReactNode> = {
  prohibition: prohibition(null),
  'no-pump': prohibition(
    <>
      <path d="M27 20h30v8H27zM39 28h6v16h-6zM33 42h18v36H33zM24 78h36v7H24z" fill={black} />
      <path d="M51 70c14 2 20-4 20-14V38" fill="none" stroke={black} strokeWidth="5" strokeLinecap="round" />
      <path d="M66 30h10v10H66z" fill={black} />
    </>,
  ),
  goggles: (
    <>
      <circle cx="50" cy="50" r="49" fill={white} />
      <circle cx="50" cy="50" r="46" fill="var(--safety-blue)" />
      <path
        d="M22 46h56M22 46c0 14 4 20 13 20s13-6 15-14c2 8 6 14 15 14s13-6 13-20M22 46l-6-4M78 46l6-4"
        fill="none"
        stroke={white}
        strokeWidth="6"
        strokeLinecap="round"
      />
    </>
  ),
  warning: (
    <>
      <path d="M50 4.5L98.5 90.5H1.5z" fill={white} stroke={white} strokeWidth="3" strokeLinejoin="round" />
      <path d="M50 10L93.5 87h-87z" fill="var(--safety-yellow)" stroke={black} strokeWidth="6" strokeLinejoin="round" />
      <path d="M50 37v25" stroke={black} strokeWidth="9" strokeLinecap="round" />
      <circle cx="50" cy="75" r="5.500" fill={black} />
    </>
  ),
}

/** Only where the standard means just this; the sentence beside it says what. */
export function SafetySign({ sign, size = 64 }: { sign: Sign; size?: number }) {
  return (
    <svg viewBox="0 0 100 100" width={size} height={size} aria-hidden="true" focusable="false">
      {drawings[sign]}
    </svg>
  )
}
