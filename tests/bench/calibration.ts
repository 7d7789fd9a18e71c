/** A fixed loop of integer and array work; its time on this machine is what other times are held against. */
function loop(): number {
  const table = new Int32Array(4096)
  let state = 1
  for (let i = 0; i < 4_000_000; i += 1) {
    state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff
    const at = state & 4095
    table[at] = ((table[at] ?? 0) + (state >> 7)) | 0
  }
  return table.reduce((sum, value) => (sum ^ value) | 0, 0)
}

/** Milliseconds by the clock, and of processor time, which other programs on the machine disturb less. */
export interface Time {
  readonly clock: number
  readonly processor: number
}

/** Median times of the loop on this machine. */
export function calibrate(): Time {
  return medianTime(9, loop)
}

/** Median times of a thing done so often. */
export function medianTime(times: number, action: () => unknown): Time {
  const taken = Array.from({ length: times }, () => {
    const [used, start] = [process.cpuUsage(), performance.now()]
    action()
    const clock = performance.now() - start
    const { user, system } = process.cpuUsage(used)
    return { clock, processor: (user + system) / 1000 }
  })
  const middle = (of: keyof Time) =>
    taken.map((time) => time[of]).sort((a, b) => a - b)[Math.floor(times / 2)] ?? Number.NaN
  return { clock: middle('clock'), processor: middle('processor') }
}
