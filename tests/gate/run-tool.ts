import { spawn } from 'node:child_process'
import { join, resolve } from 'node:path'

export const root = resolve(import.meta.dirname, '../..')

/** Tools are started by their own files: a link in `.bin` would run them on the system's Node. */
const files = {
  biome: '@biomejs/biome/bin/biome',
  'dependency-cruiser': 'dependency-cruiser/bin/dependency-cruiser.mjs',
  'electron-vite': 'electron-vite/bin/electron-vite.js',
  knip: 'knip/bin/knip.js',
  playwright: '@playwright/test/cli.js',
  tsc: 'typescript/bin/tsc',
  vitest: 'vitest/vitest.mjs',
} as const

export interface ToolRun {
  readonly code: number
  readonly stdout: string
  /** both streams as they came, fit to be shown */
  readonly output: string
}

interface ToolOptions {
  readonly folder?: string
  /** show the output while it comes, for the long ones */
  readonly show?: boolean
}

export function runTool(
  name: keyof typeof files,
  args: readonly string[],
  options: ToolOptions = {},
): Promise<ToolRun> {
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, [join(root, 'node_modules', files[name]), ...args], {
      cwd: options.folder ?? root,
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    let stdout = ''
    let output = ''
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      stdout += text
      output += text
      if (options.show) process.stdout.write(text)
    })
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      output += text
      if (options.show) process.stdout.write(text)
    })
    child.on('error', failed)
    child.on('close', (code) => done({ code: code ?? 1, stdout, output: output.trim() }))
  })
}
