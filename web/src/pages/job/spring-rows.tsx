/** The rows of a panel that name a spring: every dimension of the sheet with its source. */
import type { AirSpring } from '@legwork/engine'
import { type Sheet, type SourcedNumber, say } from '@legwork/trade'
import { QuantityText } from '../../figures/quantity-text.tsx'
import type { Workings } from '../../figures/workings.tsx'

type Row = Workings['inputs'][number]

const sourced = (
  name: string,
  found: SourcedNumber | null | undefined,
  kind: 'length' | 'volume',
  digits = 1,
): Row[] =>
  found ? [{ name, shown: <QuantityText value={found.value} kind={kind} digits={digits} />, source: found.source }] : []

/** Bore, shaft, chambers, spacers, bath oil and the air above it. */
export function springRows(sheet: Sheet, spring: AirSpring): Row[] {
  const { bore, shaft, positiveVolume, negativeVolume, equalisingStroke, spacerVolume } = sheet.spring
  const of = (name: string, value: number, source: SourcedNumber | null | undefined): Row[] =>
    source ? [{ name, shown: <QuantityText value={value} kind="volume" />, source: source.source }] : []
  return [
    ...sourced(say('set-up.row.stroke'), sheet.stroke, 'length', 0),
    ...sourced(say('set-up.row.bore-alone'), bore, 'length'),
    ...sourced(say('set-up.row.shaft'), shaft, 'length'),
    ...sourced(say('set-up.row.positive-empty'), positiveVolume, 'volume', 0),
    ...((spring.spacers ?? 0) > 0
      ? of(
          say('set-up.row.spacers', { n: spring.spacers ?? 0 }),
          (spring.spacers ?? 0) * (spring.spacerVolume ?? 0),
          spacerVolume,
        )
      : []),
    ...sourced(say('set-up.row.negative'), negativeVolume, 'volume', 0),
    ...sourced(say('set-up.row.port'), equalisingStroke, 'length'),
    ...sourced(say('set-up.row.lower'), sheet.lowerVolume, 'volume', 0),
    ...(['left', 'right'] as const).flatMap((leg, index) =>
      of(
        say(`cutaway.oil.${leg}`),
        spring.lower?.legs[index]?.oil ?? sheet.legs?.[leg].bathOil?.value ?? 0,
        spring.lower ? sheet.legs?.[leg].bathOil : null,
      ),
    ),
  ]
}
