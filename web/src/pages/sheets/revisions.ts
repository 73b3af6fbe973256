/** The revisions of a sheet as this station has them. */
import { type Id, type Sheet, type SheetPlace, sameValue, sheetPlaces } from '@legwork/trade'
import { useMemo } from 'react'
import { useRegisters, useStation } from '../../offline/hooks.tsx'

/** Oldest first: what the server has by its versions, then what is still kept here. */
export function useAllSheets(): readonly Sheet[] {
  const { store } = useStation()
  const { sheets } = useRegisters()
  // biome-ignore lint/correctness/useExhaustiveDependencies: the memory changes in place; `sheets` is new when it did
  return useMemo(
    () =>
      [...store.memory.register('sheets')]
        .sort((one, other) => Number(one.kept) - Number(other.kept) || one.version - other.version)
        .map(({ body }) => body),
    [store, sheets],
  )
}

export function useRevisions(id: Id): readonly Sheet[] {
  const all = useAllSheets()
  return useMemo(() => all.filter((sheet) => sheet.id === id), [all, id])
}

/** Places whose value or source is another one than before. */
export function changedPlaces(sheet: Sheet, before: Sheet): readonly SheetPlace[] {
  const was = new Map(sheetPlaces(before).map(({ path, held }) => [path, held]))
  return sheetPlaces(sheet).filter(({ path, held }) => !sameValue(was.get(path), held))
}
