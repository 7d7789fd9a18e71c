import { type RefObject, useEffect, useRef, useState } from 'react'

/** How far outside the view an element still counts as near, px. */
const MARGIN = '800px'

/** Whether an element is in view or about to be. */
export function useNear<E extends HTMLElement>(): [RefObject<E | null>, boolean] {
  const element = useRef<E>(null)
  const [near, setNear] = useState(false)
  useEffect(() => {
    const node = element.current
    if (!node) return
    const observer = new IntersectionObserver((entries) => setNear(entries.at(-1)?.isIntersecting === true), {
      rootMargin: MARGIN,
    })
    observer.observe(node)
    return () => observer.disconnect()
  }, [])
  return [element, near]
}
