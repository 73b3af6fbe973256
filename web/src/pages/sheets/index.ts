export { ReadInPage } from './read-in-page.tsx'
export { SheetPage } from './sheet-page.tsx'
export { SheetsPage } from './sheets-page.tsx'
