import { contextBridge, type IpcRendererEvent, ipcRenderer } from 'electron'
import type { Bridge } from '../../shared/contract/index.ts'
import { callChannel, eventChannel, mayCloseChannel, menuChannel } from './channels.ts'

const bridge: Bridge = {
  call: (method, input) => ipcRenderer.invoke(callChannel, method, input),
  on(event, listener) {
    const hear = (_from: IpcRendererEvent, name: string, data: unknown) => {
      if (name === event) listener(data)
    }
    ipcRenderer.on(eventChannel, hear)
    return () => {
      ipcRenderer.off(eventChannel, hear)
    }
  },
  showMenu: (entries) => ipcRenderer.send(menuChannel, entries),
  mayClose: () => ipcRenderer.send(mayCloseChannel),
}

contextBridge.exposeInMainWorld('kerfwright', bridge)
