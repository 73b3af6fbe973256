/** The server's clock; tests start it at a moment of their own. */
export type Clock = () => Date

/** A clock that ticks from `start`, or the machine's. @throws RangeError for a start that is no date */
export function clockFrom(start: string | undefined): Clock {
  if (start === undefined || start === '') return () => new Date()
  const first = Date.parse(start)
  if (Number.isNaN(first)) throw new RangeError(`${start} is no ISO 8601 date and time`)
  const began = performance.now()
  return () => new Date(first + (performance.now() - began))
}
