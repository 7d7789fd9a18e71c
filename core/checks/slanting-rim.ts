import type { Member } from '../frame/index.ts'
import type { CheckContext } from './context.ts'
import { membersNamed } from './hanging-joists.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'

/** Whether a board lies neither along the house nor square to it. */
function leans({ line }: Member): boolean {
  return line !== undefined && line[0].x !== line[1].x && line[0].y !== line[1].y
}

/**
 * Rims that carry joists: those along an edge that leans more along the joists than across them, from which the joists
 * beside it hang. No table is for them.
 */
export function checkSlantingRims(context: CheckContext): readonly Check[] {
  const { frame, job } = context
  const headers = [
    ...new Set(
      context.groups.flatMap(({ supports }) =>
        supports.filter(({ kind }) => kind === 'header').map(({ id }) => id),
      ),
    ),
  ]
  return headers.flatMap((id) => {
    const member = frame.members.find((one) => one.id === id)
    if (member?.role !== 'rim') return []
    const hung = frame.joistGroups
      .flatMap(({ lines }) => lines)
      .filter(({ supports }) => supports.some((one) => one.id === id))
      .flatMap(({ memberIds }) => memberIds)
    const named = membersNamed({ frame, joistIds: hung })
    const tied = hung.filter((one) =>
      frame.connectors.some(({ kind, at }) => kind === 'uplift tie' && at.includes(one)),
    )
    const why = [
      ...(tied.length > 0 ? ['reach past their beam by more than a quarter of their span'] : []),
      ...(tied.length < hung.length ? ['reach no beam'] : []),
    ].join(' or ')
    const onBeam =
      tied.length === 0
        ? ''
        : `${membersNamed({ frame, joistIds: tied })} lie on the beam too, with ties and blocks there, but that is not counted on. `
    return [
      judge(job, {
        id: `slanting-${id}`,
        title: 'Rim that carries joists',
        subjects: [id, ...hung],
        fields: ['shape.outline'],
        prescriptive: null,
        calculated: null,
        good: () => '',
        bad: '',
        uncovered: leans(member)
          ? `No table covers rim ${member.mark}, which leans along the joists and carries the ends of ${hung.length}`
          : `No table covers rim ${member.mark}, which carries the ends of ${hung.length} joists at a hip, ${named}, for they ${why}`,
        remedy: '',
        caution: leans(member)
          ? 'Skewed hangers at its joists; posts under it where a designer asks for them.'
          : `${onBeam}A hanger on the rim for each; posts under it where a designer asks for them.`,
      }),
    ]
  })
}
