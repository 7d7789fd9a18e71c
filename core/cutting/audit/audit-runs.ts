import type { AuditFault, CutJob, CutPlan, RunGroup, RunPiece } from '../types.ts'

/** Every member of every run is covered exactly, jointed where the run allows, and staggered as it asks. */
export function auditRuns(job: CutJob, plan: CutPlan): AuditFault[] {
  const faults: AuditFault[] = []
  const known = new Set<string>()
  for (const run of job.runs) {
    const jointed = new Map<string, number[]>()
    for (const member of run.members) {
      known.add(`${run.id}|${member.id}`)
      const pieces = plan.runPieces
        .filter((piece) => piece.runId === run.id && piece.memberId === member.id)
        .sort((a, b) => a.from - b.from)
      faults.push(...auditMember(run, member.mark, pieces))
      jointed.set(
        member.id,
        pieces.slice(1).map((piece) => piece.from),
      )
    }
    faults.push(
      ...auditCaps(run, jointed),
      ...auditJointList(run, jointed, plan),
      ...auditNeighbours(run, jointed, plan),
    )
  }
  for (const piece of plan.runPieces) {
    if (!known.has(`${piece.runId}|${piece.memberId}`)) {
      faults.push({
        rule: 'unknown member',
        where: piece.mark,
        message: `${piece.mark} belongs to no member of the job.`,
      })
    }
  }
  return faults
}

function auditMember(run: RunGroup, where: string, pieces: readonly RunPiece[]): AuditFault[] {
  const faults: AuditFault[] = []
  const fault = (rule: string, message: string): void => {
    faults.push({ rule, where: `${run.label}, ${where}`, message })
  }
  const lapAt = (at: number): number => run.points.find((point) => point.at === at)?.lap ?? 0
  let reached = 0
  for (const piece of pieces) {
    if (piece.from !== reached)
      fault('run not covered', `A piece begins at ${piece.from}, the one before ends at ${reached}.`)
    reached = piece.to
    const whole = piece.from === 0 && piece.to === run.length
    const laps = (piece.from === 0 ? 0 : lapAt(piece.from)) + (piece.to === run.length ? 0 : lapAt(piece.to))
    if (piece.length !== piece.to - piece.from + laps) {
      fault(
        'lap',
        `${piece.mark} is ${piece.length} long; its span and laps make ${piece.to - piece.from + laps}.`,
      )
    }
    const wild = piece.to === run.length ? (run.wild ?? 0) : 0
    if ((piece.wild ?? 0) !== wild)
      fault('cut in place', `${piece.mark} loses ${wild} in place, not ${piece.wild ?? 0}.`)
    if (piece.to !== run.length && !run.points.some((point) => point.at === piece.to)) {
      fault('joint off its bearing', `A joint at ${piece.to} lies at no admissible point.`)
    }
    if (whole) continue
    if (piece.length < run.minPiece)
      fault('piece too short', `${piece.mark} is ${piece.length} long; the least is ${run.minPiece}.`)
    const supports = run.supports.filter((at) => piece.from <= at && at <= piece.to).length
    if (supports < run.minSupports) {
      fault(
        'too few supports',
        `${piece.mark} lies on ${supports} supports; the least is ${run.minSupports}.`,
      )
    }
  }
  if (reached !== run.length) fault('run not covered', `The pieces end at ${reached} of ${run.length}.`)
  if (run.maxJoints !== null && pieces.length - 1 > run.maxJoints) {
    fault('too many joints', `${pieces.length - 1} joints where ${run.maxJoints} are allowed.`)
  }
  return faults
}

function auditCaps(run: RunGroup, jointed: ReadonlyMap<string, readonly number[]>): AuditFault[] {
  const faults: AuditFault[] = []
  const all = [...jointed.values()].flat()
  const count = (at: number): number => all.filter((joint) => joint === at).length
  for (const point of run.points) {
    if (point.cap === null || point.excess !== null) continue
    if (count(point.at) > point.cap) {
      faults.push({
        rule: 'stagger',
        where: `${run.label}, ${point.label}`,
        message: `${count(point.at)} members are jointed at one point; ${point.cap} may be.`,
      })
    }
  }
  for (const window of run.windows ?? []) {
    const places = window.points.map((index) => run.points[index])
    const joints = places.reduce((sum, point) => sum + (point === undefined ? 0 : count(point.at)), 0)
    if (joints > window.cap) {
      faults.push({
        rule: 'stagger',
        where: `${run.label}, ${places.map((point) => point?.label).join(' and ')}`,
        message: `${joints} joints lie close together; ${window.cap} may.`,
      })
    }
  }
  return faults
}

function auditJointList(
  run: RunGroup,
  jointed: ReadonlyMap<string, readonly number[]>,
  plan: CutPlan,
): AuditFault[] {
  const nameOf = (member: string, at: number, label: string | undefined): string =>
    `${member} at ${at} (${label ?? 'no point'})`
  const listed = plan.joints
    .filter((joint) => joint.runId === run.id)
    .map((joint) => nameOf(joint.memberId, joint.at, joint.label))
  const real = [...jointed].flatMap(([member, joints]) =>
    joints.map((at) => nameOf(member, at, run.points.find((point) => point.at === at)?.label)),
  )
  const extra = listed.filter((name) => !real.includes(name))
  const lacking = real.filter((name) => !listed.includes(name))
  if (extra.length === 0 && lacking.length === 0 && listed.length === real.length) return []
  return [
    {
      rule: 'joint list',
      where: run.label,
      message: `Joints listed and joints made differ: ${[...extra, ...lacking].join(', ') || 'one is listed twice'}.`,
    },
  ]
}

function auditNeighbours(
  run: RunGroup,
  jointed: ReadonlyMap<string, readonly number[]>,
  plan: CutPlan,
): AuditFault[] {
  if (!run.neighboursApart) return []
  const order = plan.memberOrder.find((entry) => entry.runId === run.id)?.memberIds ?? []
  const complete =
    order.length === run.members.length &&
    run.members.every((member) => order.filter((id) => id === member.id).length === 1)
  if (!complete) {
    return [
      {
        rule: 'member order',
        where: run.label,
        message: 'The order laid is not an order of all its members.',
      },
    ]
  }
  return order.slice(1).flatMap((id, index) => {
    const before = jointed.get(order[index] ?? '') ?? []
    const shared = (jointed.get(id) ?? []).find((at) => before.includes(at))
    if (shared === undefined) return []
    return [
      { rule: 'neighbours', where: run.label, message: `Two neighbours are both jointed at ${shared}.` },
    ]
  })
}
