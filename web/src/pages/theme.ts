/** Day or night: as the machine says, until somebody chooses. */
export type Theme = 'machine' | 'light' | 'dark'
const key = 'legwork.theme'

export function chosenTheme(): Theme {
  const said = localStorage.getItem(key)
  return said === 'light' || said === 'dark' ? said : 'machine'
}

export function applyTheme(theme: Theme = chosenTheme()): void {
  if (theme === 'machine') delete document.documentElement.dataset.theme
  else document.documentElement.dataset.theme = theme
}

export function chooseTheme(theme: Theme): void {
  if (theme === 'machine') localStorage.removeItem(key)
  else localStorage.setItem(key, theme)
  applyTheme(theme)
}
