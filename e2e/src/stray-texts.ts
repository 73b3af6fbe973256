import type { Page } from 'playwright-core'

/** Visible text that is neither in brackets nor marked as data (`translate="no"`). */
export async function strayTexts(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const stray: string[] = []
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    let depth = 0
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      let outside = ''
      for (const letter of node.nodeValue ?? '') {
        if (letter === '⟦') depth += 1
        else if (letter === '⟧') depth -= 1
        else if (depth === 0) outside += letter
      }
      const parent = node.parentElement
      // What a hand wrote or may write, and a drawing's numbers with their measure, are data.
      if (!parent || parent.closest('[translate="no"], script, style, title, textarea')) continue
      const least = parent.closest('svg') ? /\p{L}{4,}/u : /\p{L}/u
      if (least.test(outside) && parent.checkVisibility()) stray.push(outside.trim())
    }
    return stray
  })
}
