import { createHash } from 'node:crypto'
import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { brotliCompressSync, gzipSync } from 'node:zlib'
import react from '@vitejs/plugin-react'
import { defineConfig, type Plugin } from 'vite'
import { fillShell, shellFiles } from './src/offline/shell-files.ts'

/** Tells the service worker which files make the app's shell, and gives each build of the shell its own name. */
function shellIntoWorker(): Plugin {
  return {
    name: 'legwork-shell-into-worker',
    apply: 'build',
    enforce: 'post',
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const worker = bundle['sw.js']
        if (worker?.type !== 'chunk') this.error('The service worker was not built as sw.js')
        if (worker.imports.length > 0) this.error(`sw.js must stand alone; it imports ${worker.imports.join(', ')}`)
        const files = shellFiles(Object.keys(bundle))
        const digest = createHash('sha256').update(files.join('\n'))
        const page = bundle['index.html']
        if (page?.type === 'asset') digest.update(page.source)
        worker.code = fillShell(worker.code, { name: digest.digest('hex').slice(0, 16), files })
      },
    },
  }
}

/** Writes each text file once more as Brotli and gzip beside it, so that the server need not squeeze it at every call. */
function squeezed(): Plugin {
  return {
    name: 'legwork-squeezed',
    apply: 'build',
    async writeBundle({ dir }, bundle) {
      if (!dir) return
      for (const name of Object.keys(bundle).filter((one) => /\.(?:js|css|html|svg)$/.test(one))) {
        const path = join(dir, name)
        const plain = await readFile(path)
        await writeFile(`${path}.gz`, gzipSync(plain, { level: 9 }))
        await writeFile(`${path}.br`, brotliCompressSync(plain))
      }
    },
  }
}

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url))

export default defineConfig({
  root: here('.'),
  plugins: [react(), shellIntoWorker(), squeezed()],
  build: {
    target: 'es2023',
    // Nothing inline: the pages are served under a content security policy without 'unsafe-inline'.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rollupOptions: {
      input: { app: here('index.html'), sw: here('src/worker-shell.ts') },
      output: {
        entryFileNames: ({ name }) => (name === 'sw' ? 'sw.js' : 'assets/[name]-[hash].js'),
      },
    },
  },
  server: {
    port: Number(process.env.LEGWORK_WEB_PORT ?? 4721),
    proxy: { '/api': process.env.LEGWORK_API ?? 'http://127.0.0.1:4720' },
  },
})
