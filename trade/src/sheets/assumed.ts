/** Assumed values: common practice under one fixed document name, so that every screen and paper can tell them. */
import type { Sheet, Source } from './sheet.ts'

export const assumedDocument = 'assumed: the maker’s sheet decides'

export const assumed: Source = {
  kind: 'common-practice',
  document: assumedDocument,
  revision: null,
  page: null,
  person: null,
  at: null,
  instrument: null,
}

export const isAssumed = (source: Source): boolean =>
  source.kind === 'common-practice' && source.document === assumedDocument

/** Places of a sheet that still stand on an assumption. */
export function assumedPlaces(sheet: Sheet): readonly string[] {
  const found: string[] = []
  const walk = (value: unknown, path: string): void => {
    if (typeof value !== 'object' || value === null) return
    const source: unknown = Reflect.get(value, 'source')
    if (typeof source === 'object' && source !== null && Reflect.get(source, 'document') === assumedDocument)
      found.push(path)
    else for (const [name, inside] of Object.entries(value)) walk(inside, path ? `${path}.${name}` : name)
  }
  walk(sheet, '')
  return found
}
