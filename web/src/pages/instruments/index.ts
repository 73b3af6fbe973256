/** The pages of the instruments: a part of their own, loaded when one is opened. */
import './words.ts'

export { InstrumentPage, NewInstrumentPage } from './instrument-page.tsx'
export { InstrumentsPage } from './instruments-page.tsx'
