/** A stretch of a strip and what a reading in it means. */
export interface LimitZone {
  readonly from: number
  readonly to: number
  readonly verdict: 'pass' | 'watch' | 'fail'
}
