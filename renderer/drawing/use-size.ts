import { type RefObject, useLayoutEffect, useRef, useState } from 'react'

export interface Size {
  readonly width: number
  readonly height: number
}

/** The inner size of an element, in pixels, followed as it changes. */
export function useSize<E extends HTMLElement>(initial: Size): [RefObject<E | null>, Size] {
  const element = useRef<E>(null)
  const [size, setSize] = useState(initial)
  useLayoutEffect(() => {
    const node = element.current
    if (!node) return
    const read = () => {
      const { clientWidth: width, clientHeight: height } = node
      if (width > 0 && height > 0)
        setSize((old) => (old.width === width && old.height === height ? old : { width, height }))
    }
    read()
    const observer = new ResizeObserver(read)
    observer.observe(node)
    return () => observer.disconnect()
  }, [])
  return [element, size]
}
