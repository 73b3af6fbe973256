import type { ReactNode, SVGProps } from 'react'

interface WordsProps extends SVGProps<SVGTextElement> {
  children: ReactNode
  /** Keeps words readable where lines run under them. */
  halo?: boolean
}

const haloed = { paintOrder: 'stroke', stroke: 'var(--paper)', strokeWidth: 4, strokeLinejoin: 'round' } as const

/** Figures and names in a drawing, in the lettering face. */
export function Lettering({ halo = false, ...rest }: WordsProps) {
  return <text fill="var(--ink)" fontWeight={500} fontSize={14} {...(halo ? haloed : {})} {...rest} />
}

/** What a part or a line does, in the book face. */
export function BookWords({ halo = false, style, ...rest }: WordsProps) {
  return (
    <text
      fill="var(--graphite)"
      fontWeight={400}
      fontSize={15}
      style={{ fontFamily: 'var(--book)', fontFeatureSettings: 'normal', ...style }}
      {...(halo ? haloed : {})}
      {...rest}
    />
  )
}

/** A figure with its unit, smaller and a weight lighter, on the same baseline. */
export function Figure({ value, unit, size = 21, share = 0.72 }: FigureProps) {
  return (
    <>
      <tspan fontSize={size}>{`${value}\u2009`}</tspan>
      <tspan fontSize={size * share} fontWeight={400}>
        {unit}
      </tspan>
    </>
  )
}

interface FigureProps {
  value: string
  unit: string
  size?: number
  share?: number
}
