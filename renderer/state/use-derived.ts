import { useMemo } from 'react'
import { type BoardIndex, indexBoards } from './board-index.ts'
import { useJob } from './session-context.ts'
import { type Thing, thingsOf } from './things.ts'

const NOTHING: readonly Thing[] = []
const thingsCache = new WeakMap<object, readonly Thing[]>()
const boardsCache = new WeakMap<object, BoardIndex>()

function kept<K extends object, V>(cache: WeakMap<object, V>, key: K, make: (key: K) => V): V {
  const found = cache.get(key)
  if (found !== undefined) return found
  const made = make(key)
  cache.set(key, made)
  return made
}

/** Things of the design shown; made once per design, however many views ask. */
export function useThings(): readonly Thing[] {
  const design = useJob((state) => state.design)
  return useMemo(() => (design ? kept(thingsCache, design, thingsOf) : NOTHING), [design])
}

/** Which board each piece comes from; null until an estimate is there. */
export function useBoardIndex(): BoardIndex | null {
  const estimate = useJob((state) => state.estimate)
  return useMemo(() => (estimate ? kept(boardsCache, estimate, indexBoards) : null), [estimate])
}
