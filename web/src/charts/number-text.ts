/** Coordinates in a drawing are written to a hundredth of a pixel: finer than any screen, and snapshots stay short. */
export function px(value: number): string {
  const rounded = Math.round(value * 100) / 100
  return String(rounded === 0 ? 0 : rounded)
}
