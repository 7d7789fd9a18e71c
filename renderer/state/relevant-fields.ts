import {
  FIELDS,
  type FieldSpec,
  isRectangle,
  type Job,
  STAIR_BRANCHES,
  specAt,
  stairsOf,
} from '../../core/job/index.ts'

type Section = FieldSpec['section']

/** Fields of some sections that mean something for this job: a ledger deck has no rear beam, a markup no margin. */
export function relevantFields(job: Job, sections: readonly Section[]): readonly FieldSpec[] {
  return FIELDS.filter((field) => sections.includes(field.section) && isRelevant(field.path, job))
}

export function isRelevant(path: string, job: Job): boolean {
  // names a file for the command line; the window keeps its price book in the store
  if (path === 'pricing.book') return false
  // stated in the lines themselves; shown as text only where there are any
  if (path === 'pricing.lines') return job.pricing.lines.trim() !== ''
  // stands with the quote, among the papers
  if (path === 'pricing.options') return false
  // an outline has its own extent, and may have open edges at its back
  if (path === 'size.width' || path === 'size.depth') return job.shape.outline.trim() === ''
  if (path.startsWith('frame.beams.rear.')) return job.site.attachment === 'freestanding' || !isRectangle(job)
  if (path === 'shape.seams') return job.shape.zones.trim() !== ''
  if (path === 'shape.levelBeams') return job.shape.levels.trim() !== ''
  if (path === 'shape.steps') return job.shape.levels.trim() !== ''
  if (path === 'shape.stepWidth') return job.shape.levels.trim() !== '' && job.shape.steps === 'box'
  if (path === 'frame.beams.front.setback') return job.frame.beams.front.set === 'dropped'
  if (path === 'frame.bracing') return job.site.attachment === 'freestanding'
  if (path === 'site.ledgerFastener' || path === 'site.sheathing' || path === 'site.band')
    return job.site.attachment === 'ledger'
  if (path.startsWith('site.ground.along.') || path.startsWith('site.ground.away.'))
    return job.site.ground.kind === 'plane'
  if (path === 'site.ground.spots') return job.site.ground.kind === 'spots'
  if (path === 'ground.placing' || path === 'ground.fullLoad' || path === 'ground.leastLoad')
    return job.ground.concrete !== 'bags'
  if (path === 'decking.leans') return job.decking.angle > 0
  if (path === 'ground.baseThickness') return job.ground.base > 0
  if (path.startsWith('stairs.')) return ofStairs(path, job)
  if (path.startsWith('guard.')) return path === 'guard.where' || ofGuard(path, job)
  if (path === 'work.slabThickness' || path === 'work.slabSteel') return job.work.slab > 0
  if (path === 'pricing.margin') return job.builder === 'contractor' && job.pricing.method === 'margin'
  if (path === 'pricing.markup') return job.builder === 'contractor' && job.pricing.method === 'markup'
  if (path === 'pricing.method' || path === 'pricing.overhead' || path === 'pricing.priceTax')
    return job.builder === 'contractor'
  return true
}

function ofStairs(path: string, job: Job): boolean {
  const at = STAIR_BRANCHES.findLastIndex(({ branch }) => path.startsWith(`${branch}.`))
  const branch = STAIR_BRANCHES[at]?.branch ?? 'stairs'
  const stairs = specAt(job, branch)
  const before = STAIR_BRANCHES[at - 1]
  // further stairs are asked for after those before them
  if (path === `${branch}.kind`)
    return stairs.kind !== 'none' || before === undefined || specAt(job, before.branch).kind !== 'none'
  if (stairs.kind === 'none') return false
  const whole = stairs.kind === 'full width'
  switch (path.slice(branch.length + 1)) {
    case 'edge':
      return job.shape.outline !== '' || job.shape.levels !== '' || branch !== 'stairs'
    case 'align':
    case 'width':
      return !whole
    case 'place':
      return !whole && stairs.align === 'stated'
    case 'landingDepth':
      return stairs.kind.startsWith('landing')
    case 'padDepth':
    case 'padThickness':
      return stairs.foot === 'pad'
    default:
      return true
  }
}

function ofGuard(path: string, job: Job): boolean {
  if (job.guard.where === 'none') return false
  return path !== 'guard.gate' || stairsOf(job).length > 0
}
