/** Postures, and the share of a rider that each puts on the front wheel (common practice, no source). */
export const postures = ['standing', 'attack', 'seated'] as const
export type Posture = (typeof postures)[number]

export const usualShare: Readonly<Record<Posture, { low: number; high: number }>> = {
  standing: { low: 0.38, high: 0.45 },
  attack: { low: 0.43, high: 0.5 },
  seated: { low: 0.3, high: 0.4 },
}

/** The middle of what is usual: for who named a posture and weighed nothing. */
export const middleShare = (posture: Posture): number => (usualShare[posture].low + usualShare[posture].high) / 2

/** One that is not ours counts as standing. */
export const postureOf = (text: string | null): Posture => postures.find((one) => one === text) ?? 'standing'
