/** How somebody acts on the pages: with a finger, or with the keys alone. The walks are the same for both. */
import type { Locator, Page } from 'playwright-core'

export interface Hand {
  readonly page: Page
  /** A button, a link or a tick. */
  press(target: Locator): Promise<void>
  /** Writes into a field, whatever stood there. */
  write(field: Locator, text: string): Promise<void>
  /** One of a group of radio buttons. */
  choose(radio: Locator): Promise<void>
}

export function fingerOn(page: Page): Hand {
  return {
    page,
    press: (target) => target.click(),
    write: (field, text) => field.fill(text),
    choose: (radio) => radio.check({ force: true }),
  }
}

/** Nothing but keys: Tab until the target has the focus, then what its role answers to. */
export function keysOn(page: Page): Hand {
  const most = 250
  const reach = async (target: Locator, arrived: (element: Element) => boolean): Promise<void> => {
    await target.waitFor({ state: 'attached' })
    for (let pressed = 0; pressed < most; pressed++) {
      if (await target.evaluate(arrived)) return
      await page.keyboard.press('Tab')
    }
    throw new Error(`${target} was not reached with ${most} presses of Tab`)
  }
  const focused = (element: Element): boolean => element === document.activeElement
  return {
    page,
    async press(target) {
      await reach(target, focused)
      const ticked = (await target.getAttribute('role')) === 'checkbox'
      await page.keyboard.press(ticked ? 'Space' : 'Enter')
    },
    async write(field, text) {
      await reach(field, focused)
      await page.keyboard.press('ControlOrMeta+A')
      await page.keyboard.type(text)
    },
    async choose(radio) {
      // A group is one stop of Tab; the arrows go round inside it.
      await reach(radio, (element) => {
        const group = element.closest('[role=radiogroup], fieldset')
        return group?.contains(document.activeElement) ?? false
      })
      for (let pressed = 0; pressed < most; pressed++) {
        if (await radio.evaluate(focused)) break
        await page.keyboard.press('ArrowDown')
      }
      if (!(await radio.isChecked())) await page.keyboard.press('Space')
    },
  }
}
