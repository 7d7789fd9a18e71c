import type { Job } from '../job/index.ts'

/** What to mind in a soil when digging and pouring: common practice, no source, but for what names its clause. */
export function soilCautions({ site, frame }: Job): readonly string[] {
  const always = [
    'Have utilities marked before digging; dig the last two feet about a mark by hand.',
    'The building department inspects the open holes before concrete: undisturbed ground, dry, clean, to depth.',
    'Keep surface water away from the piers; backfill in layers and slope the ground off.',
  ]
  const frost =
    site.frostDepth > 0 && (site.soil === 'clay or silt' || site.soil === 'unknown')
      ? [
          'Soil that holds water grips a rough pier and lifts it when it freezes: smooth tubes to the full depth, drained backfill.',
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
  return [
    ...own[site.soil],
    ...frost,
    ...always,
    ...(frame.treatment === 'treated' ? [] : ['No untreated wood touches the ground or the concrete.']),
  ]
}
