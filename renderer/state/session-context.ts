import { createContext, useContext } from 'react'
import { useStore } from 'zustand'
import type { Session } from './session.ts'
import type { SessionState } from './session-types.ts'

export const SessionContext = createContext<Session | null>(null)

export function useSession(): Session {
  const session = useContext(SessionContext)
  if (!session) throw new Error('a view stands outside the session')
  return session
}

/** Re-renders only when what is read changes; the reader must give a kept value, not a new object. */
export function useJob<T>(read: (state: SessionState) => T): T {
  return useStore(useSession().store, read)
}
