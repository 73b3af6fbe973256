/** A formula as a handbook sets it: letters that stand for a quantity in italics, what follows `_` lowered. */
const variable = /(?<![\p{L}])(\p{L})(?:_([\p{L}\d,⁺⁻]+))?(?![\p{L}])/gu

export function Formula({ text }: { text: string }) {
  const parts: React.ReactNode[] = []
  let from = 0
  for (const found of text.matchAll(variable)) {
    const [whole, letter, lowered] = found
    parts.push(
      text.slice(from, found.index),
      <span key={found.index}>
        <i>{letter}</i>
        {lowered && <sub>{lowered}</sub>}
      </span>,
    )
    from = found.index + whole.length
  }
  return [...parts, text.slice(from)]
}
