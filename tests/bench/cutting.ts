import { auditPlan, type LpEngine, planCuts } from '../../core/cutting/index.ts'
import { loadGlpk, loadHighs } from '../../main/workers/lp/index.ts'
import { type ByHand, byHand } from './by-hand.ts'
import { type Instance, readInstances } from './cutting-files.ts'

/** One line of the report. */
interface Line {
  readonly name: string
  readonly set: string
  readonly cost: number | null
  readonly bound: number | null
  readonly proven: boolean
  readonly known: number | null
  readonly ms: number
  /** processor time, which other programs on the machine disturb less */
  readonly cpuMs: number
  readonly engine: string
  readonly status: string
  readonly faults: number
  /** null: one stock length only, where the methods by hand are all one */
  readonly byHand: ByHand | null
}

function flag(name: string, fallback: string): string {
  const at = process.argv.indexOf(name)
  return at < 0 ? fallback : (process.argv[at + 1] ?? fallback)
}

/** Limits of one instance, in seconds; what is reached first ends it. */
interface Limits {
  readonly clock: number
  readonly processor: number
}

function run(instance: Instance, engine: LpEngine, limits: Limits): Line {
  const before = process.cpuUsage()
  const started = performance.now()
  const processorMs = (): number => {
    const used = process.cpuUsage(before)
    return (used.user + used.system) / 1000
  }
  let asked = started
  const stop = (): boolean => {
    const now = performance.now()
    if (now - started > limits.clock * 1000) return true
    if (limits.processor === Number.POSITIVE_INFINITY || now - asked < 50) return false
    asked = now
    return processorMs() > limits.processor * 1000
  }
  const result = planCuts(instance.job, engine, { stop })
  const ms = Math.round((performance.now() - started) * 10) / 10
  const cpuMs = Math.round(processorMs() * 10) / 10
  const shared = {
    name: instance.name,
    set: instance.set,
    known: instance.optimum,
    ms,
    cpuMs,
    engine: engine.name,
  }
  if (!result.ok) {
    const status = result.error.message
    return { ...shared, cost: null, bound: null, proven: false, status, faults: 0, byHand: null }
  }
  const { cost, preference, bound, status } = result.value
  const faults = auditPlan(instance.job, result.value)
  for (const fault of faults.slice(0, 3))
    process.stderr.write(`${instance.name}: ${fault.rule}, ${fault.where}: ${fault.message}\n`)
  return {
    ...shared,
    cost: cost + preference,
    bound,
    proven: status === 'proven optimal',
    status,
    faults: faults.length,
    byHand: instance.job.stock.length > 1 ? byHand(instance.job, engine) : null,
  }
}

/** Cost by hand ÷ cost of the plan over all instances that a method applies to, three decimals; null where none. */
function ratioTo(lines: readonly Line[], method: keyof ByHand): number | null {
  let hand = 0
  let planned = 0
  for (const { byHand: made, cost } of lines) {
    const price = made?.[method] ?? null
    if (price === null || cost === null) continue
    hand += price
    planned += cost
  }
  return planned === 0 ? null : Math.round((hand / planned) * 1000) / 1000
}

/** A fixed amount of arithmetic, so that times of different machines can be compared by their ratio to it. */
function calibrate(): number {
  const started = performance.now()
  let x = 1
  for (let k = 0; k < 50_000_000; k++) x = (Math.imul(x, 1664525) + 1013904223) | 0
  return x === 0 ? 0 : performance.now() - started
}

function percentile(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0
}

function summary(file: string, lines: readonly Line[], calibration: number): Record<string, unknown> {
  const times = lines.map((line) => line.ms).sort((a, b) => a - b)
  const wrong = lines.filter(
    (line) =>
      line.faults > 0 ||
      (line.known !== null && line.proven && line.cost !== line.known) ||
      (line.known !== null && line.cost !== null && line.cost < line.known) ||
      (line.known !== null && line.bound !== null && line.bound > line.known),
  )
  const mean = times.reduce((total, ms) => total + ms, 0) / Math.max(1, times.length)
  return {
    summary: file,
    instances: lines.length,
    proven: lines.filter((line) => line.proven).length,
    equalToKnown: lines.filter((line) => line.known !== null && line.cost === line.known).length,
    wrong: wrong.map((line) => line.name),
    meanMs: Math.round(mean * 10) / 10,
    meanCpuMs:
      Math.round((lines.reduce((total, line) => total + line.cpuMs, 0) / Math.max(1, lines.length)) * 10) /
      10,
    medianMs: percentile(times, 0.5),
    p95Ms: percentile(times, 0.95),
    maxMs: times.at(-1) ?? 0,
    bestFitRatio: ratioTo(lines, 'bestFit'),
    oneLengthRatio: ratioTo(lines, 'oneLength'),
    jointsFirstRatio: ratioTo(lines, 'jointsFirst'),
    calibrationMs: Math.round(calibration),
    rssMb: Math.round(process.memoryUsage.rss() / 1e6),
  }
}

const files = process.argv.slice(2).filter((name) => name.endsWith('.jsonl'))
if (files.length === 0) {
  process.stderr.write(
    'Name one or more files: npm run bench:cutting -- FILE.jsonl… [--limit SECONDS] [--limit-cpu SECONDS] [--engine highs|glpk]\n',
  )
  process.exit(2)
}
/** a busy machine takes several times as long by the clock, so that a limit of processor time replaces that one */
const processor = Number(flag('--limit-cpu', 'Infinity'))
const clock = Number(flag('--limit', processor === Number.POSITIVE_INFINITY ? '60' : 'Infinity'))
const only = flag('--only', '')
const engine = flag('--engine', 'highs') === 'glpk' ? await loadGlpk() : await loadHighs()
const calibration = calibrate()
let failed = false
for (const file of files) {
  const lines: Line[] = []
  for (const instance of readInstances(file)) {
    if (only !== '' && !instance.name.includes(only)) continue
    const line = run(instance, engine, { clock, processor })
    lines.push(line)
    process.stdout.write(`${JSON.stringify(line)}\n`)
  }
  const total = summary(file, lines, calibration)
  if ((total.wrong as string[]).length > 0) failed = true
  process.stdout.write(`${JSON.stringify(total)}\n`)
}
process.exitCode = failed ? 1 : 0
