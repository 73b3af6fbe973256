import { join } from 'node:path'
import { root } from './root.mjs'

export async function bundleWeb(folder) {
  // Set before the bundler loads: with a developer's setting here the pages would carry React's slow half.
  process.env.NODE_ENV = 'production'
  const { build } = await import('vite')
  await build({ root: join(root, 'web'), logLevel: 'error', build: { outDir: folder, emptyOutDir: true } })
}
