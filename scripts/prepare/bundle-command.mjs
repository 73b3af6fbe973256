import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { root } from './root.mjs'

/** Our own rooms go into the bundle; every other package stays outside and is loaded from node_modules. */
const ownRooms = {
  name: 'own-rooms',
  setup(bundler) {
    bundler.onResolve({ filter: /^@legwork\// }, ({ path }) => {
      const [, room, ...rest] = path.split('/')
      const inside = rest.join('/') || 'index.ts'
      const file = [join(root, room, 'src', inside), join(root, room, inside)].find((candidate) =>
        existsSync(candidate),
      )
      return file ? { path: file } : { errors: [{ text: `${path}: there is no such file in the room ${room}` }] }
    })
    bundler.onResolve({ filter: /^[^./]/ }, ({ path, kind }) =>
      kind === 'entry-point' ? undefined : { path, external: true },
    )
  },
}

/** Splitting keeps the server in a piece of its own, so that `calc` answers without loading it. */
export async function bundleCommand(folder) {
  const esbuild = await import('esbuild')
  await esbuild.build({
    absWorkingDir: root,
    entryPoints: [{ in: join(root, 'cli/src/main.ts'), out: 'legwork' }],
    outdir: folder,
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20.19',
    plugins: [ownRooms],
    sourcemap: true,
    sourcesContent: false,
    logLevel: 'error',
  })
}
