/** Among the open pages of a station one leads: it sends the outbox and holds the line. When it is closed another takes over. */

/**
 * Leads as soon as no other page does, until it is stopped.
 *
 * @param locks  absent in a browser without locks: then every page leads, and the server's order and ids keep entries single
 */
export async function lead(
  workshop: string,
  stopped: AbortSignal,
  run: () => Promise<void>,
  locks: LockManager | undefined = globalThis.navigator?.locks,
): Promise<void> {
  if (!locks) return run()
  try {
    await locks.request(`legwork-leads-${workshop}`, { signal: stopped }, run)
  } catch (error) {
    // Stopped while still waiting for the lock: there was nothing to do.
    if (!stopped.aborted) throw error
  }
}

/** Sleeps that can be cut short: a new line or the network's return does not wait for the clock. */
export class Naps {
  #wakers = new Set<() => void>()

  sleep = (ms: number): Promise<void> =>
    new Promise((done) => {
      const wake = () => {
        clearTimeout(timer)
        this.#wakers.delete(wake)
        done()
      }
      const timer = setTimeout(wake, ms)
      this.#wakers.add(wake)
    })

  wake = (): void => {
    for (const wake of [...this.#wakers]) wake()
  }
}
