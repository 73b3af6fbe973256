/** A camera's picture made plain: smaller, and encoded anew, so that place, time and camera are left behind. */
import { photoBytes, photoEdge, photoTrouble } from '@legwork/contract'

export interface PlainPhoto {
  bytes: ArrayBuffer
  /** [px] */
  width: number
  height: number
}

/** `unreadable`: this browser cannot decode the file. */
export type PhotoRefused = 'unreadable' | 'too-large'

/** Width and height with the long edge at most `edge`, never larger than it was. */
export function fitted(width: number, height: number, edge: number): { width: number; height: number } {
  const scale = Math.min(1, edge / Math.max(width, height))
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) }
}

/** Sharp enough to see a hairline scratch; coarser where a picture would be too heavy. */
const qualities = [0.85, 0.7, 0.5] as const

async function encoded(bitmap: ImageBitmap, quality: number): Promise<PlainPhoto | null> {
  const { width, height } = fitted(bitmap.width, bitmap.height, photoEdge)
  const canvas = document.createElement('canvas')
  canvas.width = width
  canvas.height = height
  const context = canvas.getContext('2d')
  if (!context) return null
  // A picture with see-through parts would come out black behind them.
  context.fillStyle = '#fff'
  context.fillRect(0, 0, width, height)
  context.drawImage(bitmap, 0, 0, width, height)
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', quality))
  return blob && { bytes: await blob.arrayBuffer(), width, height }
}

/** A picture file as a plain JPEG; turned upright as its camera held it. */
export async function plainPhoto(file: Blob): Promise<PlainPhoto | PhotoRefused> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => null)
  if (!bitmap) return 'unreadable'
  try {
    for (const quality of qualities) {
      const photo = await encoded(bitmap, quality)
      if (!photo) return 'unreadable'
      // Checked as the server will: nothing is kept that it would not take.
      if (photo.bytes.byteLength <= photoBytes && photoTrouble(new Uint8Array(photo.bytes)) === null) return photo
    }
    return 'too-large'
  } finally {
    bitmap.close()
  }
}
