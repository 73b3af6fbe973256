/** The bike that a start card is worked out for: what may be put in for it. Pure. */
import { type CardBasis, say } from '@legwork/trade'

export type CardBike = Pick<CardBasis, 'headAngle' | 'frontMass' | 'sag'>

const within = (least: number, most: number, sentence: () => string) => (value: number) =>
  value < least || value > most ? sentence() : null

/** A sentence where a value can't be worked with. The arithmetic itself takes head angles from 45°. */
export const cardBikeJudges: Readonly<Record<keyof CardBike, (value: number) => string | null>> = {
  headAngle: within(45, 85, () => say('set-up.card.head-angle-range')),
  frontMass: within(0, 40, () => say('set-up.card.front-mass-range')),
  sag: within(0.05, 0.5, () => say('set-up.card.sag-range')),
}

/**
 * The bike of the three fields; null while one of them is empty or out of its range, as at any keystroke on the way from
 * "65" to "66".
 */
export function heldBike({ headAngle, frontMass, sag }: Record<keyof CardBike, number | null>): CardBike | null {
  if (headAngle === null || frontMass === null || sag === null) return null
  const bike = { headAngle, frontMass, sag }
  const held = (['headAngle', 'frontMass', 'sag'] as const).every(
    (field) => cardBikeJudges[field](bike[field]) === null,
  )
  return held ? bike : null
}
