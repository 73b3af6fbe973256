/** What rests in a job, and how long at least (common practice, no source). */
export type RestKind = 'soak' | 'settle' | 'leak'

export const restMinutes: Readonly<Record<RestKind, number>> = {
  /** Foam rings in bath oil, 5 to 10 min. */
  soak: 5,
  /** Warm air after filling. */
  settle: 15,
  /** A leak-down: 10 min finds gross leaks only, 24 h the rest. */
  leak: 10,
}
