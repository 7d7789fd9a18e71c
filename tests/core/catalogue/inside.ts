/** By x to the right and y away from the house. */
type Place = readonly [number, number]

/** Whether a place lies in a polygon: a ray from it crosses an odd number of edges. */
export function inside(corners: readonly Place[], [x, y]: Place): boolean {
  let odd = false
  corners.forEach(([ax, ay], i) => {
    const [bx, by] = corners[(i + 1) % corners.length] as Place
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) odd = !odd
  })
  return odd
}
