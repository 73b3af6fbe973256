import { execFileSync } from 'node:child_process'
import decodeQR from 'qr/decode.js'
import { expect, test } from 'vitest'
import { renderLabel } from './label.ts'

test('the code on the printed label decodes to the address, drawn by poppler', async () => {
  const address = 'http://127.0.0.1:4720/units/U01'
  const pdf = await renderLabel({
    job: 'J02',
    date: '3 May',
    pressure: '88 psi',
    coil: false,
    at: 'at 20 °C',
    lines: ['rebound 8 of 18'],
    next: 'next 50 h',
    address,
  })
  const ppm = execFileSync('pdftoppm', ['-r', '300', '-'], { input: pdf, maxBuffer: 1e8 })
  // PPM (netpbm): "P6\n<width> <height>\n255\n" and then three bytes a pixel.
  const head = /^P6\s(\d+)\s(\d+)\s255\s/.exec(ppm.subarray(0, 40).toString('latin1'))
  if (!head) throw new Error('pdftoppm did not answer with a PPM')
  const data = new Uint8Array(ppm.subarray(head[0].length))
  expect(decodeQR({ width: Number(head[1]), height: Number(head[2]), data })).toBe(address)
})
