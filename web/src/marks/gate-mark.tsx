/** A gate: a bar across two posts when shut, its leaf swung up when open. */
export function GateMark({ open, size = 34 }: { open: boolean; size?: number }) {
  const height = open ? 38 : 28
  return (
    <svg
      className="gate-mark"
      viewBox={`0 ${open ? 1 : 11} 40 ${height}`}
      width={size}
      height={(size * height) / 40}
      aria-hidden="true"
      focusable="false"
    >
      <g fill="none" stroke="currentColor" strokeLinecap="round">
        <path d={open ? 'M5 13v24M35 24v13' : 'M5 13v24M35 13v24'} strokeWidth="2.8" />
        <path d={open ? 'M5 22L24 4.5' : 'M5 21h30'} strokeWidth="5.2" />
        <path d={open ? 'M5 31L28 9.8' : 'M5 30.5h30'} strokeWidth="2.2" />
      </g>
    </svg>
  )
}
