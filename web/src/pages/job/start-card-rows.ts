/** Pressures for riders of every mass, for a unit that came without its own. Pure. */
import { pressureForSag, Refusal } from '@legwork/engine'
import { airSpringOf, loadOf, type StartInputs } from './start-pressure.ts'

export interface CardRow {
  /** With kit [kg]. */
  riderMass: number
  /** Along the leg [N]. */
  load: number
  /** Gauge at full length [Pa]; null where no allowed pressure carries it at that sag. */
  pressure: number | null
}

/** From 45 to 120 kg with kit: below and above, one measures. */
const masses = [45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100, 105, 110, 115, 120]

/**
 * One row a mass: the pressure whose sag under that rider's load is the wanted one.
 *
 * @param base  sheet, spacers, share, bike and sag that all rows have in common
 * @example cardRows(base).find((row) => row.riderMass === 85)?.pressure
 */
export function cardRows(base: Omit<StartInputs, 'riderMass'>): CardRow[] {
  const spring = airSpringOf(base.sheet, base.spacers)
  return masses.map((riderMass): CardRow => {
    const { load } = loadOf({ ...base, riderMass })
    try {
      return {
        riderMass,
        load,
        pressure: pressureForSag(spring, { load, sag: base.sag, ambient: base.ambient }).pressure,
      }
    } catch (trouble) {
      if (trouble instanceof Refusal) return { riderMass, load, pressure: null }
      throw trouble
    }
  })
}
