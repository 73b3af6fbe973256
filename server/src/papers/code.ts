import encodeQR from 'qr'
import type { Paper } from './paper.ts'

/** An address as a QR code with its quiet border, `size` wide. */
export function drawCode(paper: Paper, address: string, x: number, y: number, size: number): void {
  const rows = encodeQR(address, 'raw', { ecc: 'medium', border: 4 })
  const cell = size / rows.length
  for (const [r, row] of rows.entries())
    for (const [c, dark] of row.entries()) if (dark) paper.doc.rect(x + c * cell, y + r * cell, cell, cell)
  paper.doc.fill('#000')
}
