import { type Leg, legs, type Sheet } from '@legwork/trade'
import type { ForkDrawing } from '../papers/fork-drawing.ts'

/** The dimensions of an air fork's drawing out of its sheet [mm]; null where the sheet has not what the drawing needs. */
export function drawingOf(
  sheet: Sheet,
  set: { spacers: number; sag: number | null; oil: Readonly<Record<Leg, number | null>> },
): ForkDrawing | null {
  const { spacers, sag } = set
  const { bore, shaft, positiveVolume, negativeVolume, spacerVolume } = sheet.spring
  if (sheet.kind !== 'fork-air' || !sheet.stanchion || !bore || !shaft || !positiveVolume) return null
  const mm = 1e3
  const full = (Math.PI / 4) * bore.value ** 2
  const ring = full - (Math.PI / 4) * shaft.value ** 2
  const oilIn = (role: 'spring' | 'damper'): number | null => {
    const leg = legs.find((one) => sheet.legs?.[one].role === role || sheet.legs?.[one].role === 'both')
    const volume = leg === undefined ? null : set.oil[leg]
    return volume === null ? null : volume * mm ** 3
  }
  return {
    stanchion: sheet.stanchion.value * mm,
    bore: bore.value * mm,
    shaft: shaft.value * mm,
    stroke: sheet.stroke.value * mm,
    freeLength: (sheet.freeLength?.value ?? sheet.stroke.value) * mm,
    negativeLength: ((negativeVolume?.value ?? 0) / ring) * mm,
    positiveLength: (positiveVolume.value / full) * mm,
    spacerLength: ((spacerVolume?.value ?? 0) / full) * mm,
    spacers,
    sag: sag === null ? null : sag * mm,
    oil: { spring: oilIn('spring'), damper: oilIn('damper') },
  }
}
