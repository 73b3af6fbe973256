/**
 * The one text mechanism of the product: keys with parameters, filled from the catalogue. A template names its parameters
 * in braces; `{n?line|lines}` chooses by whether n is 1.
 */
import { catalogue } from './catalogue.ts'
import type { LaterWords } from './later.ts'

type Catalogue = typeof catalogue & LaterWords
export type WordKey = keyof Catalogue

type NameIn<Inside extends string> = Inside extends `${infer Name}?${string}` ? Name : Inside
type ParamNames<Text extends string> = Text extends `${string}{${infer Inside}}${infer Rest}`
  ? NameIn<Inside> | ParamNames<Rest>
  : never

/** A pressure [Pa gauge], put into the measure of who reads. */
export interface SaidPressure {
  pascal: number
}
/** A parameter is a text, a number already rounded for reading, a pressure, or another message. */
export type WordParam = string | number | SaidPressure | Message
export type ParamsOf<K extends WordKey> = { [P in ParamNames<Catalogue[K]>]: WordParam }

/** A text by its key, not yet put into words: what pure functions return. */
export interface Message {
  key: WordKey
  params: Readonly<Record<string, WordParam>>
}

type Given<K extends WordKey> = [ParamNames<Catalogue[K]>] extends [never] ? [] : [params: ParamsOf<K>]

/**
 * A message by its key; the compiler asks for exactly the parameters that the text names.
 *
 * @example message('leg.left') // { key: 'leg.left', params: {} }
 */
export function message<K extends WordKey>(key: K, ...given: Given<K>): Message {
  return { key, params: given[0] ?? {} }
}

const texts: Record<string, string> = { ...catalogue }

/** Texts of a part of the product that has just been loaded; until then its keys stand for themselves. */
export function addWords(part: Partial<LaterWords>): void {
  Object.assign(texts, part)
}

function textOf(key: WordKey): string {
  return texts[key] ?? key
}

/** How texts are spoken: as they are, or bracketed so that a test finds every text that is not from the catalogue. */
export type Voice = 'plain' | 'pseudo'
let voice: Voice = 'plain'

/** Switches every text of this process or page. */
export function setVoice(wanted: Voice): void {
  voice = wanted
}

let pressureMeasure: 'psi' | 'bar' = 'psi'
/** Says pressures in this measure from now on. */
export function sayPressuresIn(measure: 'psi' | 'bar'): void {
  pressureMeasure = measure
}

function pressureText({ pascal }: SaidPressure): string {
  return pressureMeasure === 'bar' ? `${(pascal / 1e5).toFixed(1)} bar` : `${Math.round(pascal / 6894.757293168)} psi`
}

function fill(text: string, params: Readonly<Record<string, WordParam>>): string {
  return text.replaceAll(
    /\{([^{}?]+)(?:\?([^{}|]*)\|([^{}]*))?\}/g,
    (whole, name: string, one?: string, other?: string) => {
      const value = params[name]
      if (value === undefined) return whole
      if (one !== undefined) return (Number(value) === 1 ? one : other) ?? ''
      if (typeof value !== 'object') return String(value)
      return 'pascal' in value ? pressureText(value) : fill(textOf(value.key), value.params)
    },
  )
}

/** Puts a message into words. In the pseudo voice the whole text stands in ⟦…⟧, messages inside it without their own. */
export function sayMessage(said: Message): string {
  const text = fill(textOf(said.key), said.params)
  return voice === 'pseudo' ? `⟦${text}⟧` : text
}

/**
 * The text of a key with its parameters.
 *
 * @example say('leg.left') // 'left'
 */
export function say<K extends WordKey>(key: K, ...given: Given<K>): string {
  return sayMessage(message(key, ...given))
}

/** Whether a text names an entry of the catalogue, for keys that come from data. */
export function isWordKey(key: string): key is WordKey {
  return Object.hasOwn(texts, key)
}
