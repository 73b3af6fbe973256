/** Tells open lines that a workshop's book has grown; each line then reads from where it is. */
export class Announcer {
  readonly #listeners = new Map<string, Set<() => void>>()

  announce(workshop: string): void {
    for (const listener of this.#listeners.get(workshop) ?? []) listener()
  }

  /** @returns how to stop listening */
  listen(workshop: string, listener: () => void): () => void {
    const listeners = this.#listeners.get(workshop) ?? new Set()
    this.#listeners.set(workshop, listeners)
    listeners.add(listener)
    return () => {
      listeners.delete(listener)
    }
  }
}
