import type { Frame, Role } from '../frame/index.ts'

function idsOf(frame: Frame, roles: readonly Role[]): readonly string[] {
  return frame.members.filter((member) => roles.includes(member.role)).map((member) => member.id)
}

export function joistIds(frame: Frame): readonly string[] {
  return idsOf(frame, ['joist', 'end joist'])
}

export function ledgerIds(frame: Frame): readonly string[] {
  return idsOf(frame, ['ledger'])
}

export function deckingIds(frame: Frame): readonly string[] {
  return idsOf(frame, ['decking'])
}
