/** The table a fork is drawn from, out of its sheet: what the engine's spring says, and the pressures at a stroke. */
import type { AirSpring, PreparedSpring, Spring } from '@legwork/engine'
import { type Leg, legs, type Sheet } from '@legwork/trade'
import type { ForkParameters, ForkTable } from './fork-parameters.ts'

const needed = ['bore', 'shaft', 'positiveVolume', 'negativeVolume'] as const

/** Whether the sheet is an air fork's and gives what its drawing needs. */
export const isDrawable = (sheet: Sheet): boolean =>
  sheet.kind === 'fork-air' && sheet.stanchion !== null && sheet.legs !== null && needed.every((f) => sheet.spring[f])

/** The leg, as the rider sees it, that holds the spring: the lower one in the drawing, whichever it is. */
export const springLegOf = (sheet: Sheet): Leg =>
  sheet.legs && sheet.legs.left.role === 'damper' && sheet.legs.right.role !== 'damper' ? 'right' : 'left'

const otherLeg = (leg: Leg): Leg => (leg === 'left' ? 'right' : 'left')

/** What the drawing does not show as it is. */
export type DrawnOtherwise = 'open-bath' | 'one-leg'

/** Null where spring and damper stand in a leg each and the damper is a closed cartridge, as they are drawn. */
export function drawnOtherwise(sheet: Sheet): DrawnOtherwise | null {
  if (legs.some((leg) => sheet.legs?.[leg].role === 'both')) return 'one-leg'
  return sheet.damper === 'open-bath' ? 'open-bath' : null
}

/**
 * Everything that stays while the stroke moves.
 *
 * @param spring  of the sheet, or of a what-if
 * @returns null where the sheet is no air fork's or lacks a dimension
 */
export function forkTableOf(sheet: Sheet, spring: Spring): ForkTable | null {
  if (!isDrawable(sheet) || !sheet.stanchion || spring.kind !== 'air' || spring.negativeVolume === undefined)
    return null
  const springLeg = springLegOf(sheet)
  const leg = (of: Leg) => ({
    oil: spring.lower?.legs[legs.indexOf(of)]?.oil ?? 0,
    volume: spring.lower?.volume ?? null,
    rod: spring.lower?.rod ?? 0,
  })
  return {
    stanchion: sheet.stanchion.value,
    travel: spring.stroke,
    spring: { kind: 'air', ...dimensions(spring), negative: { kind: 'air', volume: spring.negativeVolume } },
    legs: { left: leg(springLeg), right: leg(otherLeg(springLeg)) },
    springLeg,
    crowns: sheet.body === 'dual-crown' ? 2 : 1,
    ...(sheet.bushings ? { bushingsApart: sheet.bushings.b.value } : {}),
  }
}

function dimensions(spring: AirSpring) {
  const { bore, shaft, positiveShaft, positiveVolume, equalisingStroke, chamberOil } = spring
  return {
    bore,
    shaft,
    positiveVolume,
    spacers: spring.spacers ?? 0,
    spacerVolume: spring.spacerVolume ?? 0,
    ...(positiveShaft === undefined ? {} : { positiveShaft }),
    ...(equalisingStroke === undefined ? {} : { equalisingStroke }),
    ...(chamberOil === undefined ? {} : { chamberOil }),
  }
}

/** The fork at a stroke [m], no further than its spring goes; `ring` where it was left on the stanchion. */
export function forkAt(
  table: ForkTable,
  prepared: PreparedSpring,
  stroke: number,
  ring: number | null = stroke,
): ForkParameters {
  const here = Math.min(stroke, prepared.fullStroke)
  const { positive = 0, negative = 0, lower } = prepared.pressures(here)
  const springLeg = table.springLeg ?? 'left'
  const closedIn = (leg: Leg) => lower[legs.indexOf(leg)] ?? 0
  return {
    ...table,
    stroke: here,
    pressures: { positive, negative, left: closedIn(springLeg), right: closedIn(otherLeg(springLeg)) },
    ring: ring === null ? null : Math.min(ring, table.travel),
  }
}
