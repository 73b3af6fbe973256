/** Where the clicks of this fork start from: its last visit, else as it came in, else the middle of its range. */
import { pressureForSag, Refusal } from '@legwork/engine'
import { useMemo } from 'react'
import { useJobView } from '../job-view.tsx'
import { airSpringOf, loadOf, type StartInputs } from '../start-pressure.ts'
import { type ClicksFrom, type StartClicks, startClicks } from './start-clicks.ts'
import { useLastVisit } from './use-last-visit.ts'

/** The rider that the middle of the range is taken for, with kit (common practice, no source) [kg]. */
export const middlingRider = 75

/** The middle, with the pressure that a middling rider would have in this fork. */
function middleFor(inputs: StartInputs, range: number): ClicksFrom | null {
  const { sheet, spacers, sag, ambient } = inputs
  const { load } = loadOf({ ...inputs, riderMass: middlingRider })
  try {
    const { pressure } = pressureForSag(airSpringOf(sheet, spacers), { load, sag, ambient })
    return { basis: 'middle', clicks: range / 2, pressure }
  } catch (trouble) {
    if (trouble instanceof Refusal) return null
    throw trouble
  }
}

/** Null where the adjuster's clicks are not on the sheet, or nothing says where to begin. */
export function useStartClicks(inputs: StartInputs | null, pressure: number | null): StartClicks | null {
  const { state, sheet } = useJobView()
  const last = useLastVisit()
  const range = sheet?.clicks.rebound?.value ?? null
  const { rebound, pressure: came } = state.snapshot
  const cameClicks = rebound?.reading?.value ?? null
  const camePressure = came?.reading?.value ?? null
  return useMemo(() => {
    if (range === null || pressure === null) return null
    const lastClicks = last?.setting.clicks.rebound ?? null
    const from: ClicksFrom | null =
      last && lastClicks !== null
        ? { basis: 'last-visit', clicks: lastClicks, pressure: last.setting.pressure }
        : cameClicks !== null && camePressure !== null
          ? { basis: 'as-it-came', clicks: cameClicks, pressure: camePressure }
          : inputs && middleFor(inputs, range)
    return from && startClicks(from, pressure, range)
  }, [inputs, pressure, range, last, cameClicks, camePressure])
}
