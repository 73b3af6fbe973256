import type { Id, Measures } from '@legwork/trade'
import { createContext, type ReactNode, useContext } from 'react'

/** What figures need of the world around them: the measures of whoever reads, and names for ids. */
export interface FigureWorld {
  measures: Measures
  nameOf: (id: Id) => string | null
}

export const plainMeasures: Measures = { pressure: 'psi', torque: 'N·m', temperature: '°C', length: 'mm' }

const World = createContext<FigureWorld>({ measures: plainMeasures, nameOf: () => null })

export function FigureWorldProvider({ world, children }: { world: FigureWorld; children: ReactNode }) {
  return <World value={world}>{children}</World>
}

export const useFigureWorld = (): FigureWorld => useContext(World)
export const useMeasures = (): Measures => useContext(World).measures
