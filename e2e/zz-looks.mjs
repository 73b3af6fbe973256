import { chromium } from 'playwright-core'
import { spawn } from 'node:child_process'
import { rmSync } from 'node:fs'
const port = 4797
rmSync('/tmp/looks/data', { recursive: true, force: true }); rmSync('/tmp/looks/prof', { recursive: true, force: true })
const s = spawn('node', ['cli/dist/legwork.js', 'start'], { env: { ...process.env, LEGWORK_DATA: '/tmp/looks/data', LEGWORK_PORT: String(port), LEGWORK_NOW: '2026-06-03T10:00:00Z' }, stdio: 'inherit' })
await new Promise(r => setTimeout(r, 1800))
const ctx = await chromium.launchPersistentContext('/tmp/looks/prof', { executablePath: '/usr/bin/chromium', args: ['--no-sandbox'], viewport: { width: 1024, height: 768 }, timezoneId: 'UTC' })
const p = ctx.pages()[0]
p.setDefaultTimeout(8000)
p.on('console', m => { if (m.type() === 'error') console.log('console:', m.text().slice(0, 300)) }); p.on('pageerror', e => console.log('pageerror', e.message.slice(0, 400)))
try {
  await p.goto(`http://127.0.0.1:${port}/`)
  await p.screenshot({ path: '/tmp/looks/s1.png' })
  await p.getByRole('button', { name: /demo workshop/ }).click()
  await p.waitForTimeout(2500)
  await p.screenshot({ path: '/tmp/looks/s2.png' })
  const links = await p.locator('a[href^="/jobs/"]').evaluateAll(a => a.map(x => x.getAttribute('href')))
  console.log(links.length, links[0], links[1])

  const want = (process.argv[2]||'1024x768').split(',')
  const chs = (process.argv[3]||'take-in,look-over,plan,work,prove,set-up,hand-over,book').split(',')
  const scheme = process.argv[4]||'light'
  await p.emulateMedia({colorScheme: scheme})
  const hrefs=[...new Set(links)]
  for (const size of want) { const [width,height]=size.split('x').map(Number); await p.setViewportSize({width,height})
  for (const jx of (process.argv[5]||'0').split(',')) for (const ch of chs) {
    await p.goto('http://127.0.0.1:'+port+(ch==='T'?'/take-in':ch==='B'?'/':hrefs[jx]+'/'+ch)); await p.waitForTimeout(500)
    const over = await p.evaluate(()=>[document.documentElement.scrollWidth-innerWidth, document.documentElement.scrollHeight-innerHeight])
    console.log(size,ch,jx,over.join(' '))
    await p.screenshot({ path: '/tmp/looks/'+width+'-'+ch+'-'+jx+'-'+scheme+'.png' })
  }}
} catch (e) { console.log(e.message.slice(0, 600)); await p.screenshot({ path: '/tmp/looks/err.png' }) }
await ctx.close(); s.kill('SIGKILL')
