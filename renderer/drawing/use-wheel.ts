import { type RefObject, useEffect, useRef } from 'react'

/** a notch of a wheel, and a pinch on a pad, in powers of e per px */
const WHEEL = 0.0016
const PINCH = 0.01
const LINE = 16

/**
 * The wheel over an element makes its drawing larger or smaller about the pointer. Where the page itself scrolls, the
 * wheel is the page's, unless Ctrl is held or the drawing is larger than whole.
 */
export function useWheel<E extends HTMLElement>(
  element: RefObject<E | null>,
  isLarger: boolean,
  onZoom: (factor: number, at: { readonly x: number; readonly y: number }) => void,
): void {
  const now = useRef({ isLarger, onZoom })
  now.current = { isLarger, onZoom }
  useEffect(() => {
    const node = element.current
    if (!node) return
    function onWheel(event: WheelEvent) {
      const page = document.documentElement
      const scrolls = page.scrollHeight > page.clientHeight + 1
      if (scrolls && !event.ctrlKey && !now.current.isLarger) return
      event.preventDefault()
      const box = node?.getBoundingClientRect()
      if (!box) return
      const dy = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? event.deltaY * LINE : event.deltaY
      const factor = Math.exp(-dy * (event.ctrlKey ? PINCH : WHEEL))
      now.current.onZoom(factor, { x: event.clientX - box.left, y: event.clientY - box.top })
    }
    node.addEventListener('wheel', onWheel, { passive: false })
    return () => node.removeEventListener('wheel', onWheel)
  }, [element])
}
