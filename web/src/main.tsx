import { setVoice } from '@legwork/trade'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './app.tsx'
import { applyTheme } from './pages/theme.ts'
import './ui/tokens.css'
import './ui/fonts.css'
import './ui/base.css'

applyTheme()
if (new URLSearchParams(location.search).get('voice') === 'pseudo') setVoice('pseudo')

const place = document.getElementById('app')
if (!place) throw new Error('The page has no element #app')
createRoot(place).render(
  <StrictMode>
    <App />
  </StrictMode>,
)

if (import.meta.env.PROD && 'serviceWorker' in navigator) void navigator.serviceWorker.register('/sw.js')
