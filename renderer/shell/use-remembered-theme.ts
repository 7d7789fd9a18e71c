import { useMantineColorScheme } from '@mantine/core'
import { useEffect } from 'react'
import { useStore } from 'zustand'
import type { Session } from '../state/session.ts'

/** Light or dark as it is remembered; until that is read, as the page had it last. */
export function useRememberedTheme(session: Session): void {
  const { colorScheme, setColorScheme } = useMantineColorScheme()
  const theme = useStore(session.store, (state) => state.memory?.theme)
  useEffect(() => {
    // said again it would style the whole page anew, at every edit
    if (theme !== undefined && theme !== colorScheme) setColorScheme(theme)
  }, [theme, colorScheme, setColorScheme])
}
