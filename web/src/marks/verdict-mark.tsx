import type { ReactNode } from 'react'

export type Verdict = 'pass' | 'watch' | 'fail' | 'cannot-tell'

const ring = { cx: 12, cy: 12, r: 8.5, fill: 'none', stroke: 'currentColor', strokeWidth: 2 }

/** The more trouble, the more ink; no verdict by hue. */
const drawings: Record<Verdict, ReactNode> = {
  pass: <circle {...ring} />,
  watch: (
    <>
      <path
        d="M12 2.5L21.5 12 12 21.5 2.5 12z"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
        strokeLinejoin="round"
      />
      <path d="M2.5 12h19L12 21.5z" fill="currentColor" />
    </>
  ),
  // The cross is a hole, so that it shows whatever ground the mark stands on.
  fail: (
    <path
      fillRule="evenodd"
      fill="currentColor"
      d="M3.2 2.25h17.6q.95 0 .95.95v17.6q0 .95-.95.95H3.2q-.95 0-.95-.95V3.2q0-.95.95-.95zM7.15 8.85L10.3 12l-3.15 3.15 1.7 1.7L12 13.7l3.15 3.15 1.7-1.7L13.7 12l3.15-3.15-1.7-1.7L12 10.3 8.85 7.15z"
    />
  ),
  'cannot-tell': (
    <>
      <circle {...ring} strokeDasharray="3.3 3.37" />
      <circle cx="12" cy="12" r="1.8" fill="currentColor" />
    </>
  ),
}

export function VerdictMark({ verdict, size = 24 }: { verdict: Verdict; size?: number }) {
  return (
    <svg viewBox="0 0 24 24" width={size} height={size} aria-hidden="true" focusable="false">
      {drawings[verdict]}
    </svg>
  )
}
