import { type ForkParameters, forkTableOf } from '@legwork/drawing'
import { type Leg, legs, type Sheet, springOf } from '@legwork/trade'

/**
 * The fork at full length as it is set, for its drawing: the sheet's dimensions, the spacers and the oil that are in it,
 * the ring where the sag left it. Null where the sheet has not what the drawing needs.
 */
export function drawingOf(
  sheet: Sheet,
  set: { spacers: number; sag: number | null; oil: Readonly<Record<Leg, number | null>> },
): ForkParameters | null {
  if (sheet.kind !== 'fork-air' || !sheet.spring.bore || !sheet.spring.shaft) return null
  if (!sheet.spring.positiveVolume || !sheet.spring.negativeVolume) return null
  const table = forkTableOf(sheet, springOf(sheet, { spacers: set.spacers }))
  if (!table) return null
  const oilIn = (role: 'spring' | 'damper'): number => {
    const leg = legs.find((one) => sheet.legs?.[one].role === role || sheet.legs?.[one].role === 'both')
    return (leg && set.oil[leg]) ?? 0
  }
  return {
    ...table,
    legs: {
      left: { ...table.legs.left, oil: oilIn('spring') },
      right: { ...table.legs.right, oil: oilIn('damper') },
    },
    stroke: 0,
    pressures: { positive: 0, negative: 0, left: 0, right: 0 },
    ring: set.sag,
  }
}
