/** A torque wrench laid down, its adapter at the nut, with the lengths that the setting comes from. */
import { px } from '../charts/number-text.ts'

export interface WrenchDrawingProps {
  /** Square to the middle of the grip [m]; square to nut [m]. */
  wrench: { name: string; length: number; adapterLength: number }
  /** Spoken. */
  label: string
  /** As written on the dimension lines. */
  words: { length: string; adapter: string }
}

const scale = 2420 // px a metre
const y = 62

function Dimension({ from, to, words }: { from: number; to: number; words: string }) {
  const at = 122
  return (
    <g stroke="var(--ink)" strokeWidth={0.8} fill="none">
      <path d={`M${px(from)} ${y + 34}V${at + 7}M${px(to)} ${y + 34}V${at + 7}M${px(from)} ${at}H${px(to)}`} />
      <path d={`M${px(from)} ${at}l9 -2.2v4.4zM${px(to)} ${at}l-9 -2.2v4.4z`} fill="var(--ink)" stroke="none" />
      <text
        x={px((from + to) / 2)}
        y={at + 20}
        fontSize={16}
        fontWeight={500}
        textAnchor="middle"
        stroke="none"
        fill="var(--ink)"
      >
        {words}
      </text>
    </g>
  )
}

export function WrenchDrawing({ wrench, label, words }: WrenchDrawingProps) {
  const nut = 60
  const square = nut + wrench.adapterLength * scale
  const grip = square + wrench.length * scale
  const width = grip + 150
  const head = 46 / 2
  const hexagon = Array.from({ length: 6 }, (_, i) => {
    const angle = (i * Math.PI) / 3
    return `${px(nut + 19 * Math.cos(angle))},${px(y + 19 * Math.sin(angle))}`
  }).join(' ')
  const line = { stroke: 'var(--ink)', strokeWidth: 1.5 }
  return (
    <svg width={width} height={152} viewBox={`0 0 ${px(width)} 152`} role="img" aria-label={label}>
      {wrench.adapterLength > 0 && (
        <>
          <circle cx={nut} cy={y} r={48} fill="var(--alloy)" {...line} strokeWidth={1} />
          <path d={`M${nut} ${y - 14}H${px(square)}v28H${nut}z`} fill="var(--steel)" {...line} />
        </>
      )}
      <circle cx={nut} cy={y} r={30} fill="var(--steel)" {...line} />
      <polygon points={hexagon} fill="var(--paper)" {...line} />
      <circle cx={nut} cy={y} r={8} fill="var(--steel)" {...line} />
      <path
        d={`M${px(square)} ${y - 16}l80 -5H${px(grip - 190)}v42H${px(square + 80)}l-80 -5z`}
        fill="var(--steel)"
        {...line}
      />
      <circle cx={px(square)} cy={y} r={38} fill="var(--steel)" {...line} />
      <circle cx={px(square)} cy={y} r={27} fill="none" {...line} strokeWidth={0.8} />
      <rect x={px(square - 11)} y={y - 11} width={22} height={22} fill="var(--paper)" {...line} />
      <rect x={px(grip - 190)} y={y - head} width={86} height={46} fill="var(--leaf)" {...line} />
      <path
        d={Array.from({ length: 9 }, (_, i) => `M${px(grip - 182 + i * 8.6)} ${y - head}v${i % 4 ? 9 : 16}`).join('')}
        {...line}
        strokeWidth={0.8}
      />
      <path d={`M${px(grip - 147)} ${y + 15}l-8 -16h16z`} fill="var(--hand)" />
      <rect x={px(grip - 104)} y={y - 25} width={220} height={50} rx={10} fill="var(--alloy)" {...line} />
      <path d={`M4 ${y}H${px(width - 4)}`} {...line} strokeWidth={0.6} strokeDasharray="14 4 2 4" />
      <path d={`M${px(grip)} ${y - 36}v72`} {...line} strokeWidth={1} />
      <Dimension from={square} to={grip} words={words.length} />
      {wrench.adapterLength > 0 && <Dimension from={nut} to={square} words={words.adapter} />}
    </svg>
  )
}
