import { describe, expect, it } from 'vitest'
import { cleanEnvironment } from './install.mjs'

describe('the environment an install runs in', () => {
  it('is free of a production setting and of the npm script that called', () => {
    const called = {
      NODE_ENV: 'production',
      INIT_CWD: '/somewhere',
      npm_lifecycle_event: 'prestart',
      npm_config_omit: 'dev',
      npm_config_dry_run: 'true',
      NPM_CONFIG_WORKSPACE: 'web',
      PATH: '/bin',
    }
    expect(cleanEnvironment(called)).toEqual({ PATH: '/bin' })
  })

  it('keeps where packages come from, for a shop behind a proxy or a mirror', () => {
    const told = {
      npm_config_registry: 'http://mirror',
      npm_config_https_proxy: 'http://proxy',
      HTTPS_PROXY: 'http://proxy',
    }
    expect(cleanEnvironment(told)).toEqual(told)
  })
})
