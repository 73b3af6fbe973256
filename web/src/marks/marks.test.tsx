import type { SourceKind } from '@legwork/trade'
import type { ReactElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { ArrowLeft, ArrowRight } from './arrow-mark.tsx'
import { GateMark } from './gate-mark.tsx'
import { CameraIcon, MinusIcon, PencilIcon, PlusIcon, TickIcon } from './icon.tsx'
import { Logo } from './logo.tsx'
import { SafetySign, type Sign } from './safety-sign.tsx'
import { SourceMark } from './source-mark.tsx'
import { type Verdict, VerdictMark } from './verdict-mark.tsx'

const sources: SourceKind[] = [
  'makers-sheet',
  'measured-here',
  'worked-out',
  'handbook',
  'common-practice',
  'rider-said',
]
const verdicts: Verdict[] = ['pass', 'watch', 'fail', 'cannot-tell']
const signs: Sign[] = ['no-pump', 'prohibition', 'goggles', 'warning']

const marks: Record<string, ReactElement> = {
  logo: <Logo />,
  'arrow-left': <ArrowLeft />,
  'arrow-right': <ArrowRight />,
  'gate-shut': <GateMark open={false} />,
  'gate-open': <GateMark open />,
  tick: <TickIcon />,
  plus: <PlusIcon />,
  minus: <MinusIcon />,
  camera: <CameraIcon />,
  pencil: <PencilIcon />,
  ...Object.fromEntries(sources.map((source) => [`source-${source}`, <SourceMark key={source} kind={source} />])),
  ...Object.fromEntries(
    verdicts.map((verdict) => [`verdict-${verdict}`, <VerdictMark key={verdict} verdict={verdict} />]),
  ),
  ...Object.fromEntries(signs.map((sign) => [`sign-${sign}`, <SafetySign key={sign} sign={sign} />])),
}

describe('marks', () => {
  it.each(Object.entries(marks))('%s is hidden from the reader: the word beside it speaks', (_name, mark) => {
    const svg = renderToStaticMarkup(mark)
    expect(svg).toMatch(/^<svg [^>]*aria-hidden="true"/)
    expect(svg).not.toMatch(/<text|<title|NaN|undefined/)
  })

  it('no two marks are drawn alike', () => {
    const drawn = Object.values(marks).map((mark) => renderToStaticMarkup(mark))
    expect(new Set(drawn).size).toBe(drawn.length)
  })

  // ISO 3864-1: safety colours belong to the signs alone; verdicts carry none.
  it('safety colours stand in signs only', () => {
    for (const [name, mark] of Object.entries(marks))
      expect(renderToStaticMarkup(mark).includes('--safety-'), name).toBe(name.startsWith('sign-'))
  })
})
