export { InstrumentPage, NewInstrumentPage } from './instrument-page.tsx'
export { InstrumentsPage } from './instruments-page.tsx'
