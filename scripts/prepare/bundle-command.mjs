import { existsSync, readFileSync } from 'node:fs'
import { join, relative, sep } from 'node:path'
import { root } from './root.mjs'

const folderOfBundle = join(root, 'cli/dist')

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

/** A source that looks for a file beside itself (a font, the built pages) must find it from inside the bundle as well. */
const addressesOfSources = {
  name: 'addresses-of-sources',
  setup(bundler) {
    bundler.onLoad({ filter: /\.ts$/ }, ({ path }) => {
      const fromBundle = relative(folderOfBundle, path).split(sep).join('/')
      const own = `new URL(${JSON.stringify(fromBundle)}, import.meta.url).href`
      return { contents: readFileSync(path, 'utf8').replaceAll('import.meta.url', own), loader: 'ts' }
    })
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
    plugins: [ownRooms, addressesOfSources],
    sourcemap: true,
    sourcesContent: false,
    logLevel: 'silent',
  })
}
