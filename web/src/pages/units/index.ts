/** Units and their life lines, riders and what they ride: a part of its own, loaded when one is opened. */
import './words.ts'

export { UnitPage } from './unit-page.tsx'
export { UnitsPage } from './units-page.tsx'
