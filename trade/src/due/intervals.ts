/** Hours between services, where the sheet has none: common practice, no source. */
export interface Interval {
  /** [h] */
  low: number
  high: number
}
export const intervals = {
  'lower-legs': { low: 30, high: 60 },
  wipers: { low: 60, high: 120 },
  'air-spring': { low: 80, high: 150 },
  damper: { low: 100, high: 200 },
  'shock-sleeve': { low: 40, high: 100 },
  'shock-damper': { low: 100, high: 200 },
  coil: { low: 50, high: 50 },
} as const satisfies Record<string, Interval>
export type DueService = keyof typeof intervals

/** What shortens or stretches an interval [-] (common practice, no source). */
export const conditionFactors = {
  'dry-dust': 0.7,
  'wet-mud': 0.6,
  'jet-washed': 0.5,
  'bike-park': 0.6,
  'e-bike': 0.7,
  'over-95-kg': 0.8,
  'road-gravel': 1.5,
} as const
export type Condition = keyof typeof conditionFactors
