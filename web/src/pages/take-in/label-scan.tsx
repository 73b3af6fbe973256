/** Reading a label's code with the camera, where the browser can. */
import { say } from '@legwork/trade'
import { useState } from 'react'
import '../../photos/photo-strip.css'

/** The Shape Detection API's part that is used; not every browser has it. */
interface CodeReader {
  detect: (image: ImageBitmap) => Promise<{ rawValue: string }[]>
}
interface WithCodeReader {
  BarcodeDetector?: new (options: { formats: string[] }) => CodeReader
}

// The browser's own types do not know this API yet.
const Reader = (globalThis as WithCodeReader).BarcodeDetector

async function codeIn(file: File): Promise<string | null> {
  if (!Reader) return null
  const image = await createImageBitmap(file).catch(() => null)
  if (!image) return null
  const codes = await new Reader({ formats: ['qr_code'] }).detect(image).catch(() => [])
  image.close()
  return codes[0]?.rawValue ?? null
}

export function LabelScan({ onCode }: { onCode: (code: string) => void }) {
  const [unread, setUnread] = useState(false)
  if (!Reader) return null
  const read = async (file: File | undefined) => {
    if (!file) return
    const code = await codeIn(file)
    setUnread(code === null)
    if (code) onCode(code)
  }
  return (
    <>
      <label className="button second size-row photo-input">
        <span>{say('take-in.scan')}</span>
        <input
          type="file"
          accept="image/*"
          capture="environment"
          onChange={(event) => void read(event.target.files?.[0])}
        />
      </label>
      <p className="refusal" role="alert">
        {unread && say('take-in.scan.unread')}
      </p>
    </>
  )
}
