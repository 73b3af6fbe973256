/** A slender filled arrowhead, as on a dimension line. */
export function Arrow({ length = 44, back = false }: { length?: number; back?: boolean }) {
  return (
    <svg viewBox="0 0 44 20" width={length} height={(length * 20) / 44} aria-hidden="true">
      <g transform={back ? 'scale(-1 1) translate(-44 0)' : undefined}>
        <path d="M2 10h24" stroke="currentColor" strokeWidth="2.4" strokeLinecap="round" />
        <path d="M42 10L20 4.2v11.6z" fill="currentColor" />
      </g>
    </svg>
  )
}
