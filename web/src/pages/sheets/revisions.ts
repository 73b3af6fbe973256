/** The revisions of a sheet as this station has them. */
import { type Id, judgeables, type Sheet, sameValue, say, sayMessage, sheetPlaces } from '@legwork/trade'
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

/** Names of what has another value or source than before: places, then limits. */
export function changedFrom(before: Sheet, sheet: Sheet): readonly string[] {
  const was = new Map(sheetPlaces(before).map(({ path, held }) => [path, held]))
  const places = sheetPlaces(sheet).filter(({ path, held }) => !sameValue(was.get(path), held))
  const limits = judgeables.filter((what) => !sameValue(before.limits[what], sheet.limits[what]))
  return [
    ...places.map(({ label }) => sayMessage(label)),
    ...limits.map((what) => say('sheet.revision.limit', { what: say(`measure.${what}`) })),
  ]
}
