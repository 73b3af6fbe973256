/** The words a sheet may choose from. */
import type { Body, DamperKind, FootFixing, LegRole, SourceKind, UnitKind } from './sheet.ts'

export const unitKinds: readonly UnitKind[] = ['fork-air', 'fork-coil', 'shock-air', 'shock-coil']
export const bodies: readonly Body[] = ['single-crown', 'dual-crown', 'in-line', 'piggyback']
export const damperKinds: readonly DamperKind[] = [
  'open-bath',
  'sealed-cartridge',
  'bladder-cartridge',
  'in-line-ifp',
  'piggyback-ifp',
]
export const legRoles: readonly LegRole[] = ['spring', 'damper', 'both']
export const footFixings: readonly FootFixing[] = ['hollow-bolt', 'nut-on-shaft', 'bolt-behind-knob', 'captive-bolt']
export const sourceKinds: readonly SourceKind[] = [
  'makers-sheet',
  'measured-here',
  'worked-out',
  'handbook',
  'common-practice',
  'rider-said',
]
