import type { Bridge, Client } from '../../shared/contract/index.ts'
import { desktopClient } from './desktop-client.ts'
import { httpClient } from './http-client.ts'

declare global {
  interface Window {
    /** set by the desktop's preload script; absent in a browser */
    readonly kerfwright?: Bridge
  }
}

/** The one way to the machine: the desktop's bridge where there is one, else the loopback host. */
export function connect(): Client {
  return window.kerfwright ? desktopClient(window.kerfwright) : httpClient()
}
