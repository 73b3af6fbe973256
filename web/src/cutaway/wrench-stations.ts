/** Where the parts of a wrench stand along it [mm]; the two lengths of the sum are to scale, the rest is drawn to fit. */
export interface WrenchStations {
  readonly adapter: boolean
  readonly nut: number
  readonly square: number
  readonly windowFrom: number
  readonly gripFrom: number
  /** Middle of the grip: where the hand pulls. */
  readonly hand: number
  readonly gripTo: number
}

/**
 * @param wrench  square to the middle of the grip, square to nut (0 without an adapter) [m]
 * @example wrenchStations({ length: 0.245, adapterLength: 0.03 }).hand // 21 + 30 + 245 = 296
 */
export function wrenchStations(wrench: { length: number; adapterLength: number }): WrenchStations {
  const nut = 21
  const square = nut + wrench.adapterLength * 1e3
  const hand = square + wrench.length * 1e3
  const gripFrom = hand - 45
  return {
    adapter: wrench.adapterLength > 0,
    nut,
    square,
    windowFrom: Math.max(square + 36, gripFrom - 35),
    gripFrom,
    hand,
    gripTo: hand + 48,
  }
}
