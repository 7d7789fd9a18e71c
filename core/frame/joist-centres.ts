import { inches, type Ticks, ticks } from '../units/index.ts'

/** Centre distance of the added last joist from the end joist's centre: common practice, no source. */
const CLOSING_BAY = inches(3)

/**
 * Centres of the joists between the end joists, from the left end, ascending.
 * Laid out from the outer face of one end joist at s, 2s, 3s … as far as 3 in before the far end joist's centre;
 * where the bay then left is wider than s, one more joist stands 3 in from that centre (common practice, no source).
 */
export function innerJoistCentres(
  width: Ticks,
  spacing: Ticks,
  joistThickness: Ticks,
  layoutFrom: 'left' | 'right',
): readonly Ticks[] {
  const farCentre = width - joistThickness / 2
  const last = farCentre - CLOSING_BAY
  const centres: number[] = []
  for (let centre: number = spacing; centre <= last; centre += spacing) centres.push(centre)
  const reached = centres.at(-1) ?? joistThickness / 2
  if (farCentre - reached > spacing) centres.push(last)
  const placed = layoutFrom === 'left' ? centres : centres.map((centre) => width - centre).reverse()
  return placed.map(ticks)
}

/** Centres of all joist lines, end joists included. */
export function allJoistCentres(
  inner: readonly Ticks[],
  width: Ticks,
  joistThickness: Ticks,
): readonly Ticks[] {
  return [ticks(joistThickness / 2), ...inner, ticks(width - joistThickness / 2)]
}
