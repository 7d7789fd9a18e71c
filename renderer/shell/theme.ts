import { type CSSVariablesResolver, createTheme } from '@mantine/core'

export const theme = createTheme({
  fontFamily: "'Atkinson Hyperlegible Next', system-ui, sans-serif",
  primaryShade: 8,
  defaultRadius: 6,
  respectReducedMotion: true,
})

/** Mantine's floating parts take our paper and ink. */
export const variables: CSSVariablesResolver = () => ({
  variables: {
    '--mantine-color-body': 'var(--panel)',
    '--mantine-color-text': 'var(--ink)',
    '--mantine-color-dimmed': 'var(--soft)',
    '--mantine-color-default-border': 'var(--edge)',
  },
  light: {
    '--mantine-color-body': 'var(--panel)',
    '--mantine-color-text': 'var(--ink)',
    '--mantine-color-dimmed': 'var(--soft)',
  },
  dark: {
    '--mantine-color-body': 'var(--panel)',
    '--mantine-color-text': 'var(--ink)',
    '--mantine-color-dimmed': 'var(--soft)',
  },
})
