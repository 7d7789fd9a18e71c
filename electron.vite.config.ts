import { resolve } from 'node:path'
import react from '@vitejs/plugin-react'
import { defineConfig } from 'electron-vite'

const at = (path: string) => resolve(import.meta.dirname, path)

export default defineConfig({
  main: {
    build: {
      // Bundled, the validators start in a fifth of the time: the package's own entry loads every language.
      externalizeDeps: { exclude: ['zod', 'jsonc-parser'] },
      rolldownOptions: {
        input: {
          index: at('main/desktop/index.ts'),
          host: at('main/host/index.ts'),
          worker: at('main/workers/estimate-worker.ts'),
          papers: at('main/app/paper-worker.ts'),
        },
      },
    },
  },
  preload: {
    build: {
      externalizeDeps: false,
      rolldownOptions: {
        input: { preload: at('main/desktop/preload.ts') },
        output: { format: 'cjs', entryFileNames: '[name].cjs' },
      },
    },
  },
  renderer: {
    root: 'renderer',
    plugins: [react()],
    build: {
      minify: true,
      cssMinify: true,
      rolldownOptions: { input: { index: at('renderer/index.html') } },
    },
  },
})
