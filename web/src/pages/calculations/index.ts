/** The pages of the calculations: a part of their own, loaded when one is opened. */
import './words.ts'

export { CalculationsPage } from './list.tsx'
export { CalculationPage } from './page.tsx'
