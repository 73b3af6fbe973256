/** The engine's spring out of a sheet. */
import { Refusal, type Spring } from '@legwork/engine'
import { legs } from '../journal/entry.ts'
import type { Sheet } from './sheet.ts'

function needed(sheet: Sheet, field: string): number {
  const value = sheet.spring[field]?.value
  if (value !== undefined) return value
  throw new Refusal([
    {
      field: `spring.${field}`,
      code: 'missing',
      came: 'nothing',
      allowed: 'a value from the maker’s sheet or measured here',
      next: `Fill it in on sheet ${sheet.name}, revision ${sheet.revision}.`,
    },
  ])
}

function given(sheet: Sheet, fields: readonly string[]): Record<string, number> {
  return Object.fromEntries(
    fields.flatMap((field) => {
      const value = sheet.spring[field]?.value
      return value === undefined ? [] : [[field, value] as const]
    }),
  )
}

/**
 * The spring of a unit by its sheet, with the air closed in the lower legs above the sheet's oil, the damper's gas where the
 * sheet knows it, and the maximum pressure. All SI, stroke 0 at full length.
 *
 * @param options.spacers  other than the sheet's count; a whole number from 0
 * @param options.oil      other than the sheet's bath oil, per leg [m³]
 * @throws Refusal naming the value that the sheet does not give
 * @example springOf(sheet, { spacers: 2 })
 */
export function springOf(
  sheet: Sheet,
  options: { spacers?: number; oil?: { left: number; right: number } } = {},
): Spring {
  const spacers = options.spacers ?? sheet.spacers?.value ?? 0
  if (!Number.isInteger(spacers) || spacers < 0)
    throw new Refusal([
      {
        field: 'spacers',
        code: 'not-whole',
        came: String(spacers),
        allowed: 'a whole number from 0',
        next: 'Count the spacers.',
      },
    ])
  const { lowerVolume, stanchion } = sheet
  const rod = sheet.spring.lowerRod?.value ?? (sheet.damper === 'open-bath' ? 0 : undefined)
  const lower =
    sheet.legs && lowerVolume && stanchion && rod !== undefined
      ? {
          lower: {
            volume: lowerVolume.value,
            stanchion: stanchion.value,
            rod,
            legs: legs.map((leg) => ({ oil: options.oil?.[leg] ?? sheet.legs?.[leg].bathOil?.value ?? 0 })),
          },
        }
      : {}
  const gas = sheet.spring.damperGasPressure
    ? {
        damperGas: {
          pressure: needed(sheet, 'damperGasPressure'),
          volume: needed(sheet, 'damperGasVolume'),
          rod: needed(sheet, 'damperGasRod'),
        },
      }
    : {}
  const shared = { stroke: sheet.stroke.value, ...lower, ...gas }
  if (sheet.springKind === 'coil')
    return { kind: 'coil', rate: needed(sheet, 'rate'), preload: sheet.spring.preload?.value ?? 0, ...shared }
  return {
    kind: 'air',
    bore: needed(sheet, 'bore'),
    shaft: needed(sheet, 'shaft'),
    positiveVolume: needed(sheet, 'positiveVolume'),
    negativeVolume: needed(sheet, 'negativeVolume'),
    ...given(sheet, ['equalisingStroke', 'positiveShaft', 'spacerVolume', 'chamberOil']),
    spacers,
    ...(sheet.maxPressure ? { maxPressure: sheet.maxPressure.value } : {}),
    ...shared,
  }
}
