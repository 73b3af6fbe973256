/** How much script the first page and the Bench wait for: at most 180 kB, as gzip squeezes it. */
import { gzipSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { useBench } from './src/bench.ts'
import { enterDemo } from './src/walk.ts'

const most = 180_000

describe('the first load', () => {
  const bench = useBench()

  /** Scripts that the page itself asked for, squeezed alike whatever the server sent; the worker fetches its own later. */
  async function scriptsOf(act: () => Promise<void>): Promise<Map<string, number>> {
    const { page } = bench
    const names = new Set<string>()
    const note = (request: { resourceType(): string; url(): string }): void => {
      if (request.resourceType() === 'script') names.add(request.url())
    }
    page.on('request', note)
    await act()
    page.off('request', note)
    const sizes = new Map<string, number>()
    for (const name of names) {
      if (name.endsWith('/sw.js')) continue
      const plain = await fetch(name, { headers: { 'accept-encoding': 'identity' } })
      sizes.set(name, gzipSync(Buffer.from(await plain.arrayBuffer()), { level: 9 }).length)
    }
    return sizes
  }
  const sum = (sizes: Map<string, number>): number => [...sizes.values()].reduce((all, one) => all + one, 0)

  it('the first page', async () => {
    const scripts = await scriptsOf(async () => {
      await bench.page.goto(bench.address)
      await bench.page.getByRole('button', { name: 'Look around the demo workshop' }).waitFor()
    })
    expect(scripts.size).toBeGreaterThan(0)
    expect(sum(scripts)).toBeLessThanOrEqual(most)
  })

  it('the Bench, opened anew', async () => {
    await enterDemo(bench.page, bench.address)
    const scripts = await scriptsOf(async () => {
      await bench.page.reload()
      await bench.page.getByRole('link', { name: /Take in a unit/ }).waitFor()
    })
    expect(scripts.size).toBeGreaterThan(0)
    expect(sum(scripts)).toBeLessThanOrEqual(most)
  })
})
