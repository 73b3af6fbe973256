/** Words by which a thing is found: the same on the server and on a tablet without the network. */

/**
 * A text's words as they are kept and looked for: small letters, no accents, each once.
 *
 * @example wordsOf('Yaldizanlı’s 35 mm fork') // ['yaldizanli', 's', '35', 'mm', 'fork']
 */
export function wordsOf(text: string): string[] {
  const plain = text.normalize('NFKD').replace(/\p{M}/gu, '').replaceAll('ı', 'i').toLowerCase()
  return [...new Set(plain.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== ''))]
}

/**
 * Whether every word that is looked for begins a word of the text; nothing looked for finds nothing.
 *
 * @example beginsIn('fork yal', 'U08 35 mm coil fork, Yaldizanlı') // true
 * @example beginsIn('ork', 'U08 35 mm coil fork') // false
 */
export function beginsIn(looked: string, text: string): boolean {
  const words = wordsOf(text)
  const wanted = wordsOf(looked)
  return wanted.length > 0 && wanted.every((one) => words.some((word) => word.startsWith(one)))
}
