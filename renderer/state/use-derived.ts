import { useMemo } from 'react'
import { type BoardIndex, indexBoards } from './board-index.ts'
import { type Grip, gripsOf } from './grips/index.ts'
import { useJob } from './session-context.ts'
import { type Thing, thingsOf } from './things.ts'

const NOTHING: readonly Thing[] = []
const NO_GRIPS: readonly Grip[] = []
const gripsCache = new WeakMap<object, readonly Grip[]>()
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

/** What of the design shown can be moved. */
export function useGrips(): readonly Grip[] {
  const design = useJob((state) => state.design)
  return useMemo(() => (design ? kept(gripsCache, design, gripsOf) : NO_GRIPS), [design])
}

/** Which board each piece comes from; null until an estimate is there. */
export function useBoardIndex(): BoardIndex | null {
  const estimate = useJob((state) => state.estimate)
  return useMemo(() => (estimate ? kept(boardsCache, estimate, indexBoards) : null), [estimate])
}
