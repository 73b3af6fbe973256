import { forceAt } from './force-stroke-geometry.ts'
import type { Framed } from './force-stroke-props.ts'
import { inARow } from './in-a-row.ts'
import { BookWords, Figure, Lettering } from './lettering.tsx'
import { px } from './number-text.ts'

const line = 19

/** Names at the ends of their curves, none on another: the reader needs no legend. */
function CurveNames({ frame, slow, fast, lastVisit, before, words }: Framed) {
  const { x, y, plot } = frame
  const named = [
    { curve: slow, name: words.slow },
    { curve: fast, name: words.fast },
    { curve: lastVisit, name: words.lastVisit },
    { curve: before, name: words.before },
  ].flatMap(({ curve, name }) => {
    const end = curve?.at(-1)
    return end && end.force !== null && name !== undefined ? [{ name, at: y(end.force), x: x(end.stroke) }] : []
  })
  const room = plot.height + plot.top
  const places = inARow(
    named.map(({ at }) => at),
    line,
    room,
  )
  return named.map(({ name, at, x: end }, index) => {
    const here = places[index] ?? at
    return (
      <g key={name}>
        {Math.abs(here - at) > 4 && (
          <path d={`M${px(end)} ${px(at)}l7 ${px(here - at)}`} stroke="var(--ink)" strokeWidth={0.6} fill="none" />
        )}
        <BookWords halo x={px(end + 9)} y={px(here + 5)}>
          {name}
        </BookWords>
      </g>
    )
  })
}

/** Words stand on their line. */
export function LineWords(props: Framed) {
  const { frame, load, wanted, fullStroke, slow } = props
  const { x, y, plot } = frame
  const crosses = load && slow.find((point) => (point.force ?? 0) >= load.force)?.stroke
  const loadFrom = x(Math.min(fullStroke * 0.45, (crosses ?? fullStroke * 0.2) + fullStroke * 0.04))
  return (
    <>
      <CurveNames {...props} />
      {wanted && (
        <BookWords halo x={px(x(wanted.to) + 5)} y={plot.top + 17}>
          {wanted.words}
        </BookWords>
      )}
      {load && (
        <Lettering
          halo
          x={px(loadFrom)}
          y={px(Math.min(y(load.low) + 18, plot.top + plot.height - 5))}
          fontWeight={600}
        >
          <Figure value={load.value} unit={load.unit} size={17} />
          <tspan
            dx={8}
            fontSize={14.5}
            fontWeight={400}
            fill="var(--graphite)"
            style={{ fontFamily: 'var(--book)', fontFeatureSettings: 'normal' }}
          >
            {load.words}
          </tspan>
        </Lettering>
      )}
    </>
  )
}

/** The force under the finger, beside its ring: it is read off at the same glance. */
export function FingerForce({ frame, slow, stroke, fullStroke, forceMeasure }: Framed) {
  const force = forceAt(slow, stroke)
  if (force === null) return null
  const { x, y, plot } = frame
  // Below the curve there is nothing on the way; near its end the names stand there.
  const above = stroke > fullStroke * 0.7
  return (
    <Lettering
      halo
      x={px(x(stroke) + (above ? -10 : 10))}
      y={px(above ? Math.max(plot.top + 34, y(force) - 10) : Math.min(plot.top + plot.height - 5, y(force) + 20))}
      textAnchor={above ? 'end' : 'start'}
      fontWeight={600}
    >
      <Figure value={forceMeasure.format(force / forceMeasure.size)} unit={forceMeasure.unit} size={17} />
    </Lettering>
  )
}
