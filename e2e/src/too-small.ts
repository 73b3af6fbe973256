/** Everything a glove may press is at least 48 px either way, measured where a touch really lands. */
import type { Page } from 'playwright-core'

/**
 * Names of the targets on the page that are too small. A target is measured by what answers at points 23.5 px from its
 * middle; links in running text are left out (WCAG 2.2, 2.5.8: inline).
 */
export async function tooSmall(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const asked =
      'a[href], button, input, select, textarea, summary, [role=button], [role=checkbox], [role=radio], [role=slider], [role=switch], [role=tab], [role=option], [tabindex="0"]'
    const short: string[] = []
    // A label answers for the field that it names.
    const zoneOf = (element: Element): Element => element.closest('label') ?? element
    for (const element of document.querySelectorAll<HTMLElement>(asked)) {
      if (!element.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue
      const zone = zoneOf(element)
      const box = zone.getBoundingClientRect()
      // Pictures that only take the focus to be read, scrolled regions, and fields hidden from sight under their label.
      if (box.width < 2 || box.height < 2) continue
      if (element.matches('[tabindex="0"]') && element.scrollHeight > element.clientHeight) continue
      if (element.matches('a[href]') && getComputedStyle(element).display === 'inline') continue
      if (Math.min(box.width, box.height) >= 47.5) continue
      zone.scrollIntoView({ block: 'center', inline: 'center' })
      const here = zone.getBoundingClientRect()
      const [x, y] = [here.left + here.width / 2, here.top + here.height / 2]
      const lands = (dx: number, dy: number): boolean => {
        const hit = document.elementFromPoint(x + dx, y + dy)
        return hit !== null && (zone.contains(hit) || zoneOf(hit) === zone)
      }
      const reach = 23.5
      const wide = here.width >= 47.5 || (lands(-reach, 0) && lands(reach, 0))
      const high = here.height >= 47.5 || (lands(0, -reach) && lands(0, reach))
      if (!wide || !high) {
        const name = element.getAttribute('aria-label') ?? element.textContent?.trim() ?? ''
        short.push(
          `${element.tagName.toLowerCase()} '${name.slice(0, 40)}' ${here.width.toFixed(0)}×${here.height.toFixed(0)}`,
        )
      }
    }
    return short
  })
}
