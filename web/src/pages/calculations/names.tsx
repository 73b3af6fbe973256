/** What fields, answers and words of a calculation are called on screen. */
import { isWordKey, sayMessage } from '@legwork/trade'
import { Fragment, type ReactNode } from 'react'
import { dayAndYear } from '../../figures/moment.ts'
import type { Path } from './draft.ts'

/** `positiveVolume` → `Positive volume`: for a name the catalogue has no word for, which makes it data. */
function spelled(name: string): string {
  const apart = name
    .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
    .replaceAll('-', ' ')
    .toLowerCase()
  return apart.charAt(0).toUpperCase() + apart.slice(1)
}

function first(keys: readonly string[]): string | null {
  for (const key of keys) if (isWordKey(key)) return sayMessage({ key, params: {} })
  return null
}

function nearest(path: Path): { name: string; owner: string | null } {
  const names = path.filter((step) => typeof step === 'string')
  return { name: names.at(-1) ?? '', owner: names.at(-2) ?? null }
}

function keysOf(where: 'field' | 'out', calc: string, path: Path): string[] {
  const { name, owner } = nearest(path)
  // What `doubt` carries doubt through stands in its `input`.
  const whose = owner === null || owner === 'input' ? calc : owner
  return [`calc.${where}.${whose}.${name}`, `calc.${where}.${name}`]
}

/** The text of a name, for a label that is spoken. */
export function fieldText(calc: string, path: Path): string {
  return first(keysOf('field', calc, path)) ?? spelled(nearest(path).name)
}

/** Name of a field. */
export function FieldName({ calc, path }: { calc: string; path: Path }): ReactNode {
  return first(keysOf('field', calc, path)) ?? <span translate="no">{spelled(nearest(path).name)}</span>
}

/** Signs, faults and tests are called here as everywhere else. */
const foundKeys = (word: string): string[] => [`look.sign.${word}`, `fault.${word}`, `test.${word}`]

/** Name of an answer; where it has none of its own, that of the field of the same name. */
export function AnswerName({ calc, path }: { calc: string; path: Path }): ReactNode {
  const { name } = nearest(path)
  const said = first([...keysOf('out', calc, path), ...keysOf('field', calc, path), ...foundKeys(name)])
  if (said !== null) return said
  // The share of a field deep inside: every name on the way to it.
  const steps = name.split(/[.[\]]+/).filter((step) => step !== '')
  if (steps.length < 2) return <span translate="no">{spelled(name)}</span>
  return steps.map((step, index) => (
    <Fragment key={steps.slice(0, index + 1).join('.')}>
      {index > 0 && ' · '}
      {/^\d+$/.test(step) ? (
        <span translate="no">{Number(step) + 1}</span>
      ) : (
        <FieldName calc={calc} path={steps.slice(0, index + 1)} />
      )}
    </Fragment>
  ))
}

/** A word that is chosen from a list or comes out of a calculation; a day as days are written. */
export function ChoiceName({ word, path }: { word: string; path: Path }): ReactNode {
  const { name, owner } = nearest(path)
  const keys = [`calc.choice.${name}.${word}`, `calc.choice.${owner}.${word}`, `calc.choice.${word}`]
  const said = first([...keys, ...foundKeys(word)])
  if (said !== null) return said
  return <span translate="no">{/^\d{4}-\d{2}-\d{2}$/.test(word) ? dayAndYear(word) : word}</span>
}

/** What a way of asking is called: by the first field it needs. */
export function WayName({ calc, path, names }: { calc: string; path: Path; names: readonly string[] }): ReactNode {
  const [name = ''] = names
  return first([`calc.way.${name}`]) ?? <FieldName calc={calc} path={[...path, name]} />
}
