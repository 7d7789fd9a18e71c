import { useRef } from 'react'

/** Drawn sideways so far, a solid drawing goes over the next corner, px. */
const CORNER = 90

/** How a solid drawing follows a pointer that drags it: over the next corner for every so many pixels along. */
export function useTurning(onTurn: (way: 'on' | 'back') => void): (dx: number) => void {
  const along = useRef(0)
  return (dx) => {
    along.current += dx
    while (Math.abs(along.current) >= CORNER) {
      onTurn(along.current > 0 ? 'back' : 'on')
      along.current -= Math.sign(along.current) * CORNER
    }
  }
}
