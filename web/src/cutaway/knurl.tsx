import { usePatternId } from '../charts/hatch.tsx'

/** The crossed lines of a knurled grip, as a pattern and as the fill that takes it. */
export function useKnurl() {
  const id = usePatternId()
  return {
    fill: `url(#${id})`,
    knurl: (
      <pattern id={id} patternUnits="userSpaceOnUse" width={5} height={5} patternTransform="rotate(45)">
        <path d="M0 0V5M0 0H5" stroke="var(--ink)" strokeWidth={0.7} strokeOpacity={0.75} />
      </pattern>
    ),
  }
}
