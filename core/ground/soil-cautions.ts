import { footingDepth } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { printLength } from '../units/index.ts'

/** What to mind in a soil when digging and pouring: common practice, no source, but for what names its clause. */
export function soilCautions(job: Job): readonly string[] {
  const { site, frame, ground } = job
  const utilities =
    'Have utilities marked before digging, by the local one-call centre (811 in the United States); dig the last two feet about a mark by hand.'
  const depth = `Dig to ${printLength(footingDepth(job))} or deeper, measured at each hole: at or under the frost depth, ${printLength(site.frostDepth)} as stated, which the building department knows; never less than 12 in (IRC 2021 R403.1.4).`
  const always = [
    depth,
    'The building department inspects the open holes before concrete: undisturbed ground, dry, clean, to depth.',
    'Keep surface water away from the piers; backfill in layers and slope the ground off.',
  ]
  const grips = site.soil === 'clay or silt' || site.soil === 'unknown'
  const frost =
    site.frostDepth > 0 && grips
      ? [
          'Soil that holds water grips a rough pier and lifts it when it freezes, however deep it stands (NRC Canadian Building Digest 128): smooth tubes to the full depth, drained backfill.',
        ]
      : []
  const own: { readonly [soil in Job['site']['soil']]: readonly string[] } = {
    unknown: [
      'The soil is not known: dig one hole first and have it looked at. Fill, peat and soft clay carry less than any table says.',
    ],
    'clay or silt': [
      'Clay softens where water stands in the hole: pour soon after digging, never on mud.',
      'Clay that swells and shrinks needs a licensed designer: ask what is known of the neighbourhood.',
    ],
    sand: [
      'Sand caves in: no one enters a hole deeper than it is safe to stand in; form the hole to the top.',
    ],
    'sandy gravel or gravel': [
      'Gravel digs hard and caves at the top: allow for a wider mouth and more concrete.',
    ],
    rock: [
      'On rock, clean and roughen it and ask whether pins are wanted; hire a breaker for what juts into a hole.',
    ],
  }
  const auger =
    ground.digging === 'by hand'
      ? []
      : [
          'An auger that catches throws who holds it: two strong people, no loose clothes, none near a marked service.',
        ]
  return [
    utilities,
    ...own[site.soil],
    ...frost,
    ...always,
    ...auger,
    ...(frame.treatment === 'treated' ? [] : ['No untreated wood touches the ground or the concrete.']),
  ]
}
