/** Lets work through one after the other, whatever became of the one before. */
export function inTurn(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve()
  return (work) => {
    const mine = last.then(work, work)
    last = mine.catch(() => undefined)
    return mine
  }
}
