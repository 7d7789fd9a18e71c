import type { CheckContext } from './context.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'

/** Headers and trimmers of every opening: no deck table is for them, though they are doubled as floors' are. */
export function checkOpenings({ job, layout, frame }: CheckContext): readonly Check[] {
  return layout.zones.flatMap(({ openings }) =>
    openings.map(({ number }) => {
      const headers = frame.members.filter(
        ({ id, role }) => role === 'header' && id.startsWith(`header-${number}`),
      )
      const trimmers = [...new Set(headers.flatMap(({ bearings }) => bearings))]
      return judge(job, {
        id: `opening-${number}`,
        title: 'Opening in the frame',
        subjects: [...headers.map(({ id }) => id), ...trimmers],
        fields: ['shape.openings'],
        prescriptive: null,
        calculated: null,
        good: () => '',
        bad: '',
        uncovered: `No deck table covers the headers and trimmers of opening ${number}; both are doubled, as a floor’s are (IRC 2021 R502.10)`,
        remedy: '',
        caution: 'Keep clear of a chimney as its own rules ask, and leave a tree room to grow and to sway.',
      })
    }),
  )
}
