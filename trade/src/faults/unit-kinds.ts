/** Kinds of units, and groups of them that share signs and causes. */
export const unitKinds = ['fork-air', 'fork-coil', 'shock-air', 'shock-coil'] as const
export type UnitKind = (typeof unitKinds)[number]

export const forks: readonly UnitKind[] = ['fork-air', 'fork-coil']
export const shocks: readonly UnitKind[] = ['shock-air', 'shock-coil']
export const air: readonly UnitKind[] = ['fork-air', 'shock-air']
export const coil: readonly UnitKind[] = ['fork-coil', 'shock-coil']
