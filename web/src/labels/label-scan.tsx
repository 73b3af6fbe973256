/** Reading a label's code with the camera, where the browser can. */
import { say, type Unit } from '@legwork/trade'
import { useState } from 'react'
import { useRegisters } from '../offline/hooks.tsx'
import { unitInCode } from './unit-in-code.ts'
import '../photos/photo-strip.css'

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

interface LabelScanProps {
  onUnit: (unit: Unit) => void
  size?: 'row' | 'main'
}

/** Nothing where this browser reads no codes: what stands on the label is typed then. */
export function LabelScan({ onUnit, size = 'row' }: LabelScanProps) {
  const { units } = useRegisters()
  const [says, setSays] = useState<'take-in.scan.unread' | 'take-in.scan.unknown' | null>(null)
  if (!Reader) return null
  const read = async (file: File | undefined) => {
    if (!file) return
    const code = await codeIn(file)
    const unit = code === null ? null : unitInCode(code, units)
    setSays(code === null ? 'take-in.scan.unread' : unit ? null : 'take-in.scan.unknown')
    if (unit) onUnit(unit)
  }
  return (
    <>
      <label className={`button second size-${size} photo-input`}>
        <span>{say('take-in.scan')}</span>
        <input
          type="file"
          accept="image/*"
          capture="environment"
          onChange={(event) => {
            void read(event.target.files?.[0])
            // The same picture taken again is a try too.
            event.target.value = ''
          }}
        />
      </label>
      <p className="refusal" role="alert">
        {says && say(says)}
      </p>
    </>
  )
}
