/** What a label's code says: the address of its unit's card. */
import type { Unit } from '@legwork/trade'

/** The unit that a scanned code or a pasted link names. */
export function unitInCode(text: string, units: readonly Unit[]): Unit | null {
  const id = /\/units\/([0-9a-f-]{36})/.exec(text)?.[1]
  return units.find((unit) => unit.id === id) ?? null
}

/** What is written on a label beside its code; letters' case and spaces do not matter. */
export function unitOfLabel(text: string, units: readonly Unit[]): Unit | null {
  const plain = (label: string) => label.replaceAll(/\s/g, '').toLowerCase()
  const found = units.filter((unit) => plain(unit.label) === plain(text))
  return found.length === 1 ? (found[0] ?? null) : null
}
