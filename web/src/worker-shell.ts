/** The service worker: keeps the app's shell, so that any page of it opens with no network. It never keeps an answer of the API. */
import type { Shell } from './offline/shell-files.ts'

declare const self: ServiceWorkerGlobalScope
declare global {
  var legworkShell: Shell
}

const shell: Shell = globalThis.legworkShell
const cacheName = `legwork-shell-${shell.name}`

async function install(): Promise<void> {
  const cache = await caches.open(cacheName)
  // `reload`: not from the browser's own cache, which may still hold the page of the former build.
  await cache.addAll(shell.files.map((file) => new Request(file, { cache: 'reload' })))
  await self.skipWaiting()
}

async function activate(): Promise<void> {
  const names = await caches.keys()
  const former = names.filter((name) => name.startsWith('legwork-shell-') && name !== cacheName)
  // The last former shell stays: a page of it that is still open may yet ask for one of its parts.
  await Promise.all(former.slice(0, -1).map((name) => caches.delete(name)))
  await self.clients.claim()
}

/** A page, whatever its path: the kept one, so that it is there at once on a bad line too; a newer build shows next time. */
async function page(request: Request): Promise<Response> {
  const cache = await caches.open(cacheName)
  return (await cache.match('/')) ?? fetch(request)
}

async function part(request: Request): Promise<Response> {
  return (await caches.match(request)) ?? fetch(request)
}

self.addEventListener('install', (event) => event.waitUntil(install()))
self.addEventListener('activate', (event) => event.waitUntil(activate()))
self.addEventListener('fetch', (event) => {
  const { request } = event
  const url = new URL(request.url)
  if (request.method !== 'GET' || url.origin !== self.location.origin) return
  if (url.pathname.startsWith('/api/') || url.pathname === '/healthz') return
  event.respondWith(request.mode === 'navigate' ? page(request) : part(request))
})
