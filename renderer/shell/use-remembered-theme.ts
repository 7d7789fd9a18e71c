import { useMantineColorScheme } from '@mantine/core'
import { useEffect } from 'react'
import { useStore } from 'zustand'
import type { Session } from '../state/session.ts'

/** Light or dark as it is remembered; until that is read, as the page had it last. */
export function useRememberedTheme(session: Session): void {
  const { setColorScheme } = useMantineColorScheme()
  const theme = useStore(session.store, (state) => state.memory?.theme)
  useEffect(() => {
    if (theme !== undefined) setColorScheme(theme)
  }, [theme, setColorScheme])
}
