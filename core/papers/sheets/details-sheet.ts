import { beamCornerDetails } from '../details/beam-corner-detail.ts'
import { beamOnPostDetail } from '../details/beam-on-post-detail.ts'
import type { Detail } from '../details/detail.ts'
import { footingDetail } from '../details/footing-detail.ts'
import { guardCornerDetail } from '../details/guard-corner-detail.ts'
import { guardFootDetail } from '../details/guard-foot-detail.ts'
import { guardPostDetail } from '../details/guard-post-detail.ts'
import { hipDetails } from '../details/hip-details.ts'
import { houseHoldDownDetail } from '../details/house-hold-down-detail.ts'
import { innerCornerDetail } from '../details/inner-corner-detail.ts'
import { jointDetail } from '../details/joint-detail.ts'
import { ledgerDetail } from '../details/ledger-detail.ts'
import { postBaseDetail } from '../details/post-base-detail.ts'
import { rimCornerDetail } from '../details/rim-corner-detail.ts'
import { stairDetails } from '../details/stair-detail.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import type { Layer } from '../types.ts'

const LAYERS: readonly Layer[] = ['house', 'joists', 'posts', 'marks', 'dimensions']
/** Room for a note of two lines, points. */
const LINES = 30
/** Share of a page's height for a drawing, so that it stands over its notes on one page. */
const SHARE = 0.3

const MAKERS: readonly ((estimate: PaperSource['estimate']) => Detail | readonly Detail[] | null)[] = [
  ledgerDetail,
  houseHoldDownDetail,
  beamOnPostDetail,
  beamCornerDetails,
  hipDetails,
  jointDetail,
  rimCornerDetail,
  innerCornerDetail,
  postBaseDetail,
  footingDetail,
  guardPostDetail,
  guardFootDetail,
  guardCornerDetail,
  stairDetails,
]

/** How the parts are joined, each drawn with this job's sizes and only where the job has it. */
export function detailsSheet({ estimate }: PaperSource): Sheet {
  const made = MAKERS.flatMap((maker) => maker(estimate) ?? [])
  return {
    id: 'details',
    title: 'Details',
    audience: 'permit office',
    across: false,
    blocks: [
      ...made.flatMap(({ drawing, notes }): readonly Block[] => [
        { kind: 'drawing', drawing, layers: LAYERS, near: true, share: SHARE, follows: LINES * notes.length },
        { kind: 'steps', items: notes.map((text) => ({ text })) },
      ]),
      {
        kind: 'caution',
        text: 'Metal in treated wood is hot-dip galvanised or stainless, each connector with the nails or screws it is listed for. Where a connector’s own sheet says otherwise, the sheet holds.',
      },
    ],
  }
}
