/**
 * Withdrawal of a lag screw from side grain, lb per inch of thread: 1800 G^1.5 D^0.75. NDS 2018 12.2.1.
 * The tip is no part of the thread.
 * @param gravity G
 * @param diameter D, in
 */
export function lagWithdrawal(gravity: number, diameter: number): number {
  return 1800 * gravity ** 1.5 * diameter ** 0.75
}

/**
 * Withdrawal of a smooth nail from side grain, lb per inch of penetration: 1380 G^2.5 D. NDS 2018 12.2.3.
 * @param gravity G
 * @param diameter D, in
 */
export function nailWithdrawal(gravity: number, diameter: number): number {
  return 1380 * gravity ** 2.5 * diameter
}
