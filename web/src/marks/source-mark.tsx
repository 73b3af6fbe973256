import type { SourceKind } from '@legwork/trade'
import type { ReactNode } from 'react'

const drawings: Record<SourceKind, ReactNode> = {
  'makers-sheet': <path d="M3 1.5h10v13H3zM3 5h10" />,
  'measured-here': (
    <>
      <path d="M1.2 2v12M14.8 2v12M5 8h6" />
      <path d="M2.2 8l4-1.9v3.8zM13.8 8l-4-1.9v3.8z" fill="currentColor" stroke="none" />
    </>
  ),
  'worked-out': <path d="M2 5.6h12M2 10.4h12" />,
  handbook: (
    <path d="M8 4.2C6 2.6 3.6 2.4 1.5 2.9v10c2.1-.5 4.5-.3 6.5 1.3 2-1.6 4.4-1.8 6.5-1.3v-10C12.4 2.4 10 2.6 8 4.2zM8 4.2v10" />
  ),
  'common-practice': <path d="M1.5 6.5c2-2.6 4.3-2.6 6.5-.6s4.5 2 6.5-.6M1.5 11.5c2-2.6 4.3-2.6 6.5-.6s4.5 2 6.5-.6" />,
  'rider-said': (
    <>
      <path d="M6.3 3.5C3.5 4.6 2.2 6.8 2.2 9.6M14 3.5c-2.8 1.1-4.1 3.3-4.1 6.1" />
      <circle cx="4" cy="10.7" r="1.9" fill="currentColor" />
      <circle cx="11.7" cy="10.7" r="1.9" fill="currentColor" />
    </>
  ),
}

/** The mark that leads a source line: 16 grid, round pen 1.7. */
export function SourceMark({ kind, size = 15 }: { kind: SourceKind; size?: number }) {
  return (
    <svg
      className="source-mark"
      data-source={kind}
      viewBox="0 0 16 16"
      width={size}
      height={size}
      overflow="visible"
      aria-hidden="true"
      focusable="false"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.7"
      strokeLinecap="round"
      strokeLinejoin="round"
    >
      {drawings[kind]}
    </svg>
  )
}
