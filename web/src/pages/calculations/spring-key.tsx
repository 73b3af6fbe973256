/** Where the dimensions of an air spring stand: a leg cut open and laid down, crown right, foot left. Not to scale. */
import { say } from '@legwork/trade'
import { Dimension } from '../../charts/dimension.tsx'
import { Hatch, usePatternId } from '../../charts/hatch.tsx'
import { BookWords } from '../../charts/lettering.tsx'
import { px } from '../../charts/number-text.ts'
import { useOwnWidth } from '../../charts/use-own-width.ts'
import './spring-key.css'

const height = 268
/** The axis of the leg, half of the bore, half of the shaft [px]. */
const [axis, bore, shaft] = [122, 26, 8]
const wall = 5

/** Stations along the leg as shares of its width. */
function stationsOf(width: number) {
  const at = (share: number) => Math.round(share * width)
  return {
    foot: at(0.03),
    seal: at(0.3),
    piston: at(0.42),
    port: at(0.46),
    end: at(0.7),
    spacer: at(0.86),
    top: at(0.97),
  }
}

interface LeaderProps {
  to: readonly [number, number]
  words: readonly [number, number]
  text: string
  anchor?: 'start' | 'middle' | 'end'
}

/** A thin line with a dot inside the part, and its name. */
function Leader({ to, words, text, anchor = 'middle' }: LeaderProps) {
  const isAbove = words[1] < to[1]
  return (
    <>
      <path
        d={`M${px(to[0])} ${px(to[1])}L${px(words[0])} ${px(words[1] + (isAbove ? 5 : -13))}`}
        stroke="var(--ink)"
        strokeWidth={0.8}
      />
      <circle cx={px(to[0])} cy={px(to[1])} r={2.2} fill="var(--ink)" />
      <BookWords x={px(words[0])} y={px(words[1])} textAnchor={anchor} halo>
        {text}
      </BookWords>
    </>
  )
}

export function SpringKey() {
  const [place, width] = useOwnWidth(360)
  return (
    <details className="spring-key">
      <summary>{say('calc.key.spring')}</summary>
      <div ref={place}>
        <Leg width={Math.min(width, 560)} />
      </div>
      <p className="book">{say('calc.key.spring.says')}</p>
    </details>
  )
}

function Leg({ width }: { width: number }) {
  const [cut, foam] = [usePatternId(), usePatternId()]
  const at = stationsOf(width)
  const pen = { stroke: 'var(--ink)', strokeWidth: 1.25, strokeLinejoin: 'round' } as const
  const outer = bore + wall
  const leg = outer + 12
  const both = (draw: (side: 1 | -1) => string) => draw(1) + draw(-1)
  return (
    <svg
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      overflow="visible"
      role="img"
      aria-label={say('calc.key.spring.label')}
    >
      <defs>
        <Hatch id={cut} pitch={4} width={0.8} />
        <Hatch id={foam} pitch={5} angle={-45} width={0.8} />
      </defs>
      {/* Lower leg: its room, and the bath at the foot. */}
      <path
        d={`M${at.port + 20} ${axis - leg}H${at.foot + 14}Q${at.foot} ${axis - leg} ${at.foot} ${axis}Q${at.foot} ${axis + leg} ${at.foot + 14} ${axis + leg}H${at.port + 20}V${axis + leg - 6}H${at.foot + 16}Q${at.foot + 7} ${axis + leg - 6} ${at.foot + 7} ${axis}Q${at.foot + 7} ${axis - leg + 6} ${at.foot + 16} ${axis - leg + 6}H${at.port + 20}z`}
        fill={`url(#${cut})`}
        {...pen}
      />
      <path
        d={`M${at.foot + 8} ${axis - leg + 12}H${at.foot + 34}V${axis + leg - 12}H${at.foot + 8}z`}
        fill="var(--oil)"
        fillOpacity={0.55}
        stroke="none"
      />
      <path d={`M${at.foot + 34} ${axis - leg + 6}V${axis + leg - 6}`} {...pen} strokeWidth={0.8} />
      {/* Stanchion with the air spring in it. */}
      <rect
        x={at.seal + 10}
        y={axis - bore}
        width={at.piston - at.seal - 10}
        height={2 * bore}
        fill="var(--air)"
        fillOpacity={0.42}
      />
      <rect
        x={at.piston + 9}
        y={axis - bore}
        width={at.top - at.piston - 9}
        height={2 * bore}
        fill="var(--air)"
        fillOpacity={0.3}
      />
      <path
        d={both((side) => `M${at.seal} ${axis + side * bore}H${at.top}v${side * wall}H${at.seal}z`)}
        fill={`url(#${cut})`}
        {...pen}
      />
      <path d={`M${at.top} ${axis - outer}h8v${2 * outer}h-8z`} fill={`url(#${cut})`} {...pen} />
      <path d={`M${at.seal} ${axis - bore}h10v${2 * bore}h-10z`} fill={`url(#${cut})`} {...pen} />
      <path
        d={`M${at.foot + 4} ${axis - shaft}H${at.piston}V${axis + shaft}H${at.foot + 4}z`}
        fill="var(--steel)"
        {...pen}
      />
      <path d={`M${at.piston} ${axis - bore}h9v${2 * bore}h-9z`} fill={`url(#${cut})`} {...pen} />
      <path d={`M${at.port - 6} ${axis - bore}q6 9 12 0`} fill="var(--paper)" {...pen} strokeWidth={1} />
      <path
        d={`M${at.spacer} ${axis - bore + 2}H${at.top - 2}V${axis + bore - 2}H${at.spacer}z`}
        fill={`url(#${foam})`}
        {...pen}
      />
      <path d={`M0 ${axis}H${width}`} stroke="var(--ink)" strokeWidth={0.6} strokeDasharray="16 3 2.5 3" />
      <Leader to={[at.foot + 22, axis - 20]} words={[at.foot, 20]} text={say('calc.field.oil')} anchor="start" />
      <Leader to={[at.seal - 16, axis - 22]} words={[at.seal - 34, 46]} text={say('calc.field.lower')} />
      <Leader
        to={[(at.seal + at.piston) / 2 + 4, axis - 15]}
        words={[at.piston - 4, 20]}
        text={say('calc.field.negativeVolume')}
      />
      <Leader to={[at.end, axis - 12]} words={[at.end + 12, 46]} text={say('calc.field.positiveVolume')} />
      <Leader
        to={[at.spacer + 14, axis - 12]}
        words={[at.top + 6, 20]}
        text={say('calc.field.spacerVolume')}
        anchor="end"
      />
      <Leader to={[at.foot + 58, axis]} words={[at.foot + 44, 202]} text={say('calc.field.shaft')} />
      <Dimension
        from={[at.end - 6, axis - bore]}
        to={[at.end - 6, axis + bore]}
        words={say('calc.field.bore')}
        side="left"
      />
      <path
        d={`M${at.port} ${axis - bore + 5}V188M${at.piston + 9} ${axis + outer}V246M${at.spacer} ${axis + outer}V246`}
        stroke="var(--ink)"
        strokeWidth={0.6}
      />
      <Dimension from={[at.piston + 9, 184]} to={[at.port + 6, 184]} words="" side="right" />
      <BookWords x={at.port + 12} y={189} halo>
        {say('calc.field.equalisingStroke')}
      </BookWords>
      <Dimension from={[at.piston + 9, 240]} to={[at.spacer, 240]} words={say('calc.field.stroke')} side="right" />
    </svg>
  )
}
