/** What each hypothesis that still stands foresees, and how far readings and hypotheses lie off the sheet. */
import {
  type PressFit,
  type PressQuestion,
  prepareSpring,
  pressFits,
  type Spring,
  supposedSpring,
} from '@legwork/engine'

export type PressAsked = PressQuestion & { readonly spring: Spring }

export interface PressPoint {
  readonly stroke: number
  readonly force: number
}

export interface PressLine {
  readonly name: PressFit['name']
  readonly isBest: boolean
  /** Force at each press, over the stroke. */
  readonly forces: readonly (readonly PressPoint[])[]
  /** The same less the sheet's at what the gauge showed. */
  readonly offs: readonly (readonly PressPoint[])[]
}

export interface PressMark extends PressPoint {
  /** 90 % of a mean of both directions, either way. */
  readonly half: number
}

export interface PressDrawn {
  /** Best first. */
  readonly lines: readonly PressLine[]
  /** Means of both directions less the sheet's force, by press. */
  readonly marks: readonly (readonly PressMark[])[]
  readonly deepest: number
}

/** Curves go a little beyond the deepest stop. */
const beyond = 1.06
const looks = 80

/** How much worse than the best a hypothesis may be and still be drawn, beside the sheet's own. */
const near = 6

export function pressDrawn(asked: PressAsked): PressDrawn {
  const { spring, presses, ambient = 101_325, forceSd, strokeSd } = asked
  const fits = pressFits(spring, asked)
  const [best] = fits
  const deepest = beyond * Math.max(...presses.flatMap(({ readings }) => readings.map(({ stroke }) => stroke)))
  const sheets = presses.map(({ pressure = 0 }) => prepareSpring(spring, pressure, { ambient }))
  const line = (fit: PressFit): PressLine => {
    const forces = presses.map(({ pressure = 0 }, press) => {
      const there = supposedSpring(spring, fit.name, fit.estimate ?? 0, fit.scale, pressure, ambient)
      const prepared = prepareSpring(there.spring, there.pressure, { ambient })
      const end = Math.min(deepest, prepared.fullStroke, sheets[press]?.fullStroke ?? deepest)
      return Array.from({ length: looks + 1 }, (_, look) => {
        const stroke = (end * look) / looks
        return { stroke, force: prepared.force(stroke) }
      })
    })
    const offs = forces.map((points, press) =>
      points.map(({ stroke, force }) => ({ stroke, force: force - (sheets[press]?.force(stroke) ?? 0) })),
    )
    return { name: fit.name, isBest: fit === best, forces, offs }
  }
  const marks = presses.map(({ readings }, press) =>
    readings.map(({ stroke, pressing, releasing }): PressMark => {
      const { force = 0, rate = 0 } = sheets[press]?.at(stroke) ?? {}
      const half = (1.645 * Math.hypot(forceSd, rate * strokeSd)) / Math.SQRT2
      return { stroke, force: (pressing + releasing) / 2 - force, half }
    }),
  )
  const standing = fits.filter(({ name, bic }) => name === 'as-sheet' || bic - (best?.bic ?? 0) <= near)
  return { lines: standing.map(line), marks, deepest }
}
