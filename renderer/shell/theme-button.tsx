import { useMantineColorScheme } from '@mantine/core'
import { Monitor, Moon, Sun } from 'lucide-react'

const NEXT = { auto: 'light', light: 'dark', dark: 'auto' } as const
const NAMES = { auto: 'as the system has it', light: 'light', dark: 'dark' } as const
const ICONS = { auto: Monitor, light: Sun, dark: Moon } as const

/** Steps through system, light and dark. */
export function ThemeButton() {
  const { colorScheme, setColorScheme } = useMantineColorScheme()
  const Icon = ICONS[colorScheme]
  const label = `Light or dark: ${NAMES[colorScheme]}; change to ${NAMES[NEXT[colorScheme]]}`
  return (
    <button
      type="button"
      className="button icon"
      aria-label={label}
      title={label}
      onClick={() => setColorScheme(NEXT[colorScheme])}
    >
      <Icon size={16} aria-hidden="true" />
    </button>
  )
}
