/** Pressures for riders of every mass, for a unit that came without its own. Pure. */
import { forkLoad, pressureForSag, Refusal } from '@legwork/engine'
import type { Sheet } from '../sheets/sheet.ts'
import { springOf } from '../sheets/spring-of.ts'

/** What all rows of a card have in common. */
export interface CardBasis {
  sheet: Sheet
  spacers: number
  /** The rider's share on the front wheel [-]. */
  frontShare: number
  /** Sprung mass of the bike on the fork [kg]. */
  frontMass: number
  /** [°] */
  headAngle: number
  /** Wanted, as a share of the stroke [-]. */
  sag: number
  /** [Pa, absolute] */
  ambient: number
}

export interface CardRow {
  /** With kit [kg]. */
  riderMass: number
  /** Along the leg [N]. */
  load: number
  /** Gauge at full length [Pa]; null where no allowed pressure carries it at that sag. */
  pressure: number | null
}

/** A trail bike's, where nobody measured it (common practice, no source). */
export const usualBike = { headAngle: 65, frontMass: 5 } as const

/** From 45 to 120 kg with kit: below and above, one measures. */
const masses = [45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100, 105, 110, 115, 120]

/**
 * One row a mass: the pressure whose sag under that rider's load is the wanted one.
 *
 * @throws Refusal naming what the sheet lacks; TypeError for a coil, which has no pressure
 * @example cardRows(basis).find((row) => row.riderMass === 85)?.pressure
 */
export function cardRows(basis: CardBasis): CardRow[] {
  const { sheet, spacers, frontShare, frontMass, headAngle, sag, ambient } = basis
  const spring = springOf(sheet, { spacers })
  if (spring.kind !== 'air') throw new TypeError(`sheet ${sheet.name} is of a coil; a pressure is worked out for air.`)
  return masses.map((riderMass): CardRow => {
    const { load } = forkLoad({ riderMass, frontShare, bikeFrontMass: frontMass, headAngle })
    try {
      return { riderMass, load, pressure: pressureForSag(spring, { load, sag, ambient }).pressure }
    } catch (trouble) {
      if (trouble instanceof Refusal) return { riderMass, load, pressure: null }
      throw trouble
    }
  })
}
