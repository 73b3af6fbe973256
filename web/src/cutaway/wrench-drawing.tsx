/** A torque wrench laid down, its adapter at the nut, with the lengths that the setting comes from. */
import { Lettering } from '../charts/lettering.tsx'
import { px } from '../charts/number-text.ts'
import { useKnurl } from './knurl.tsx'
import { wrenchStations } from './wrench-stations.ts'

export interface WrenchDrawingProps {
  /** Square to the middle of the grip [m]; square to nut, 0 without an adapter [m]. */
  wrench: { name: string; length: number; adapterLength: number }
  /** Spoken. */
  label: string
  /** As written on the dimension lines. */
  words: { length: string; adapter: string }
}

/** Drawn twice, at a bench's distance and in a hand, because lettering doesn't shrink with the drawing. */
export function WrenchDrawing(props: WrenchDrawingProps) {
  return (
    <>
      <div className="tablet-up">
        <Wrench {...props} scale={2.42} />
      </div>
      <div className="phone-only">
        <Wrench {...props} scale={1} />
      </div>
    </>
  )
}

function Wrench({ wrench, label, words, scale }: WrenchDrawingProps & { scale: number }) {
  const { knurl, fill } = useKnurl()
  const at = wrenchStations(wrench)
  const y = 21 * scale
  const x = (mm: number) => px(mm * scale)
  const up = (mm: number) => px(y - mm * scale)
  const width = at.gripTo * scale + 6
  const dimensionAt = y + 26 * scale
  const height = dimensionAt + 26
  const pen = { stroke: 'var(--ink)', strokeWidth: scale > 2 ? 1.5 : 1.2, strokeLinejoin: 'round' } as const
  const thin = { ...pen, strokeWidth: pen.strokeWidth * 0.55 }
  const hexagon = Array.from({ length: 6 }, (_, i) => {
    const turn = (i * Math.PI) / 3 + 0.12
    return `${x(at.nut + 7.4 * Math.cos(turn))},${px(y + 7.4 * scale * Math.sin(turn))}`
  }).join(' ')
  const grip = `M${x(at.gripFrom)} ${up(10.5)}H${x(at.gripTo - 6)}Q${x(at.gripTo)} ${up(10.5)} ${x(at.gripTo)} ${up(4)}V${up(-4)}Q${x(at.gripTo)} ${up(-10.5)} ${x(at.gripTo - 6)} ${up(-10.5)}H${x(at.gripFrom)}Z`
  return (
    <svg
      width={px(width)}
      height={px(height)}
      viewBox={`0 0 ${px(width)} ${px(height)}`}
      overflow="visible"
      role="img"
      aria-label={label}
    >
      <defs>{knurl}</defs>
      <circle cx={x(at.nut)} cy={px(y)} r={x(20)} fill="var(--alloy)" fillOpacity={0.7} {...pen} />
      {at.adapter && (
        <>
          <circle cx={x(at.nut)} cy={px(y)} r={x(12.5)} fill="none" {...thin} />
          <path d={`M${x(at.nut)} ${up(6.6)}H${x(at.square)}V${up(-6.6)}H${x(at.nut)}z`} fill="var(--steel)" {...pen} />
          <circle cx={x(at.nut)} cy={px(y)} r={x(11.5)} fill="var(--steel)" {...pen} />
          <polygon points={hexagon} fill="var(--paper)" {...pen} />
          <circle cx={x(at.nut)} cy={px(y)} r={x(3.6)} fill="var(--steel)" {...pen} />
        </>
      )}
      <path
        d={`M${x(at.square + 14)} ${up(7)}L${x(at.square + 34)} ${up(8.5)}H${x(at.windowFrom)}V${up(-8.5)}H${x(at.square + 34)}L${x(at.square + 14)} ${up(-7)}z`}
        fill="var(--steel)"
        {...pen}
      />
      <circle cx={x(at.square)} cy={px(y)} r={x(15.5)} fill="var(--steel)" {...pen} />
      <circle cx={x(at.square)} cy={px(y)} r={x(11)} fill="none" {...thin} />
      <path
        d={`M${x(at.square - 4.2)} ${up(4.2)}H${x(at.square + 4.2)}V${up(-4.2)}H${x(at.square - 4.2)}z`}
        fill="var(--paper)"
        {...pen}
      />
      <path
        d={`M${x(at.windowFrom)} ${up(9.5)}H${x(at.gripFrom)}V${up(-9.5)}H${x(at.windowFrom)}z`}
        fill="var(--leaf)"
        {...pen}
      />
      {Array.from({ length: 11 }, (_, i) => at.windowFrom + 4 + i * 2.7).map((tick, i) => (
        <path key={tick} d={`M${x(tick)} ${up(9.5)}v${x(i % 5 ? 4 : 7)}`} {...pen} strokeWidth={i % 5 ? 0.8 : 1.3} />
      ))}
      <path d={`M${x(at.windowFrom + 17.5)} ${up(-9.5)}l${x(-3)} ${x(-7)}h${x(6)}z`} fill="var(--hand)" />
      <path d={grip} fill="var(--alloy)" {...pen} />
      <path d={grip} fill={fill} />
      <path d={`M${x(at.hand)} ${up(10.2)}V${up(-10.2)}`} stroke="var(--paper)" strokeWidth={5} />
      <path d={`M${x(at.hand)} ${up(15)}V${up(-15)}`} stroke="var(--ink)" strokeWidth={1.4} />
      <path d={`M0 ${px(y)}H${px(width)}`} stroke="var(--ink)" strokeWidth={0.7} strokeDasharray="16 3 2.5 3" />
      <Dimension
        from={at.square * scale}
        to={at.hand * scale}
        above={y + 15 * scale}
        at={dimensionAt}
        words={words.length}
      />
      {at.adapter && (
        <Dimension
          from={at.nut * scale}
          to={at.square * scale}
          above={y + 16 * scale}
          at={dimensionAt}
          words={words.adapter}
        />
      )}
    </svg>
  )
}

interface DimensionProps {
  from: number
  to: number
  /** Where the thin lines begin, at the part [px]. */
  above: number
  at: number
  words: string
}

/** A dimension line with slender filled arrows; a short one keeps its arrows small. */
function Dimension({ from, to, above, at, words }: DimensionProps) {
  const head = Math.min(9, (to - from) / 3)
  return (
    <>
      <path
        d={`M${px(from)} ${px(above)}V${px(at + 7)}M${px(to)} ${px(above)}V${px(at + 7)}M${px(from)} ${px(at)}H${px(to)}`}
        stroke="var(--ink)"
        strokeWidth={0.8}
        fill="none"
      />
      <path
        d={`M${px(from)} ${px(at)}l${px(head)} -2.2v4.4zM${px(to)} ${px(at)}l${px(-head)} -2.2v4.4z`}
        fill="var(--ink)"
      />
      <Lettering x={px((from + to) / 2)} y={px(at + 20)} fontSize={16} textAnchor="middle">
        {words}
      </Lettering>
    </>
  )
}
