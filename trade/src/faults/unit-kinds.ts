/** Groups of kinds that share signs and causes. */
import type { UnitKind } from '../sheets/sheet.ts'

export const unitKinds = ['fork-air', 'fork-coil', 'shock-air', 'shock-coil'] as const satisfies readonly UnitKind[]

export const forks: readonly UnitKind[] = ['fork-air', 'fork-coil']
export const shocks: readonly UnitKind[] = ['shock-air', 'shock-coil']
export const air: readonly UnitKind[] = ['fork-air', 'shock-air']
export const coil: readonly UnitKind[] = ['fork-coil', 'shock-coil']
