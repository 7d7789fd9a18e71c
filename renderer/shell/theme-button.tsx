import { Monitor, Moon, Sun } from 'lucide-react'
import { useJob, useSession } from '../state/session-context.ts'

const NEXT = { auto: 'light', light: 'dark', dark: 'auto' } as const
const NAMES = { auto: 'as the system has it', light: 'light', dark: 'dark' } as const
const ICONS = { auto: Monitor, light: Sun, dark: Moon } as const

/** Steps through system, light and dark. */
export function ThemeButton() {
  const session = useSession()
  const theme = useJob((state) => state.memory?.theme ?? 'auto')
  const Icon = ICONS[theme]
  const label = `Light or dark: ${NAMES[theme]}; change to ${NAMES[NEXT[theme]]}`
  return (
    <button
      type="button"
      className="button icon"
      aria-label={label}
      title={label}
      onClick={() => session.remember({ theme: NEXT[theme] })}
    >
      <Icon size={16} aria-hidden="true" />
    </button>
  )
}
