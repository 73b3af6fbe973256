interface ArrowProps {
  /** Length in px; the arrow is 20/44 of it high. */
  length?: number
}

const shaft = <path d="M2 10h24" stroke="currentColor" strokeWidth="2.4" strokeLinecap="round" />
const head = <path d="M42 10L20 4.2v11.6z" fill="currentColor" />

/** Onwards: the slender filled arrow of a dimension line. */
export function ArrowRight({ length = 44 }: ArrowProps) {
  return (
    <svg viewBox="0 0 44 20" width={length} height={(length * 20) / 44} aria-hidden="true" focusable="false">
      {shaft}
      {head}
    </svg>
  )
}

/** Back. */
export function ArrowLeft({ length = 44 }: ArrowProps) {
  return (
    <svg viewBox="0 0 44 20" width={length} height={(length * 20) / 44} aria-hidden="true" focusable="false">
      <g transform="scale(-1 1) translate(-44 0)">
        {shaft}
        {head}
      </g>
    </svg>
  )
}
