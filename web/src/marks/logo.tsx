/** The mark of the house: a fork laid down, crown right, feet left, as in every drawing. */
export function Logo({ height = 22 }: { height?: number }) {
  return (
    <svg viewBox="0 0 47 22" height={height} width={(height * 47) / 22} aria-hidden="true" focusable="false">
      <path d="M5.5 2H25v7H5.5a3.5 3.5 0 0 1 0-7zM5.5 13H25v7H5.5a3.5 3.5 0 0 1 0-7z" fill="currentColor" />
      <path d="M25 5.5h13M25 16.5h13" stroke="currentColor" strokeWidth="3.2" />
      <path d="M39.5 2v18" stroke="currentColor" strokeWidth="4" />
      <path d="M41 11h6" stroke="currentColor" strokeWidth="5" />
    </svg>
  )
}
