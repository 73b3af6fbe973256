/** What is used up in a step, and how much of it: pieces, a usual amount, or what the sheet says. */

export type SupplyId =
  | 'cloth'
  | 'lint-free-cloth'
  | 'folded-cloth'
  | 'foam-ring'
  | 'wiper'
  | 'seal-grease'
  | 'alcohol'
  | 'soaking-oil'
  | 'bath-oil'
  | 'foot-washer'
  | 'air-seal-kit'
  | 'grease'
  | 'chamber-oil'

export interface Supply {
  what: SupplyId
  /** Pieces; of a step done leg by leg, on each leg. */
  pieces?: number
  /** Common practice, no source. */
  usual?: { readonly low: number; readonly high: number; readonly measure: 'g' | 'ml' }
  /** How much, or which, is the sheet's to say. */
  bySheet?: 'bathOil' | 'washer' | 'chamberOil'
  /** Laid out at an earlier step already. */
  again?: true
}

const of = (what: SupplyId): Supply => ({ what })

/** Common practice, no source; what the sheet must say is asked from it. */
export const supplies = {
  cloth: of('cloth'),
  lintFreeCloth: of('lint-free-cloth'),
  foldedCloth: of('folded-cloth'),
  foamRings: { what: 'foam-ring', pieces: 2 },
  foamRingsAgain: { what: 'foam-ring', pieces: 2, again: true },
  wipers: { what: 'wiper', pieces: 2 },
  sealGrease: { what: 'seal-grease', usual: { low: 1, high: 2, measure: 'g' } },
  alcohol: { what: 'alcohol', usual: { low: 20, high: 40, measure: 'ml' } },
  soakingOil: of('soaking-oil'),
  bathOil: { what: 'bath-oil', bySheet: 'bathOil' },
  footWasher: { what: 'foot-washer', pieces: 1, bySheet: 'washer' },
  airSealKit: { what: 'air-seal-kit', pieces: 1 },
  grease: { what: 'grease', usual: { low: 3, high: 6, measure: 'g' } },
  chamberOil: { what: 'chamber-oil', bySheet: 'chamberOil' },
} as const satisfies Record<string, Supply>
