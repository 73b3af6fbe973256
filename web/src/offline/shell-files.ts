/** Which built files a station must have to open the app with no network. Used while building, by `web/vite.config.ts`. */

export interface Shell {
  /** Changes whenever a file of the shell does. */
  name: string
  files: readonly string[]
}

const outside = /^(sw\.js|.*\.map|\.vite\/.*)$/

/**
 * The shell: every built file but the worker itself and source maps, as paths from the root, the page as `/`, sorted.
 *
 * @example shellFiles(['index.html', 'sw.js', 'assets/app-1f3.js']) // ['/', '/assets/app-1f3.js']
 */
export function shellFiles(built: readonly string[]): string[] {
  return built
    .filter((file) => !outside.test(file))
    .map((file) => (file === 'index.html' ? '/' : `/${file}`))
    .sort()
}

const place = /globalThis\.legworkShell/g

/**
 * Writes the shell into the worker's code where it says `globalThis.legworkShell`.
 *
 * @throws Error where the code does not say it: a worker without a shell would open nothing offline
 */
export function fillShell(code: string, shell: Shell): string {
  if (code.search(place) === -1) throw new Error('The worker names no globalThis.legworkShell to be filled')
  return code.replace(place, `(${JSON.stringify(shell)})`)
}
