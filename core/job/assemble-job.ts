import type { LumberSize } from '../data/index.ts'
import { type Cents, cents, type Psf, psf, type Share, share, type Ticks, ticks } from '../units/index.ts'
import type { EntryKind, EntryKinds } from './costing-entries.ts'
import type { FieldValue, Spot } from './field-value.ts'
import type { BeamSpec, FieldPath, Ground, Job, ScopeTopic, StairSpec } from './types.ts'
import { JOB_VERSION } from './upgrade.ts'

/** Puts a job together from one valid value per field. A field without one is a bug and throws. */
export function assembleJob(values: ReadonlyMap<FieldPath, FieldValue>, given: ReadonlySet<FieldPath>): Job {
  return {
    version: JOB_VERSION,
    name: text('name'),
    notes: text('notes'),
    customer: {
      name: text('customer.name'),
      address: text('customer.address'),
      contact: text('customer.contact'),
    },
    builder: choice('builder'),
    size: { width: length('size.width'), depth: length('size.depth'), height: length('size.height') },
    shape: {
      outline: text('shape.outline'),
      walls: text('shape.walls'),
      joists: choice('shape.joists'),
      zones: text('shape.zones'),
      seams: choice('shape.seams'),
      openings: text('shape.openings'),
      setbacks: text('shape.setbacks'),
      middleBeams: text('shape.middleBeams'),
      levels: text('shape.levels'),
      levelBeams: choice('shape.levelBeams'),
      steps: choice('shape.steps'),
      stepWidth: length('shape.stepWidth'),
    },
    site: {
      attachment: choice('site.attachment'),
      ground: ground(),
      frostDepth: length('site.frostDepth'),
      frostStated: given.has('site.frostDepth'),
      frostSource: text('site.frostSource'),
      soil: choice('site.soil'),
      soilBearing: load('site.soilBearing'),
      snowLoad: load('site.snowLoad'),
      snowStated: given.has('site.snowLoad'),
      liveLoad: load('site.liveLoad'),
      deadLoad: load('site.deadLoad'),
      ledgerFastener: choice('site.ledgerFastener'),
      sheathing: choice('site.sheathing'),
      band: choice('site.band'),
      onDeck: choice('site.onDeck'),
      concentratedLoad: number('site.concentratedLoad'),
      snowSource: text('site.snowSource'),
      soilSource: text('site.soilSource'),
      windExposure: choice('site.windExposure'),
      windSource: text('site.windSource'),
    },
    code: { edition: choice('code.edition'), governs: choice('code.governs') },
    frame: {
      species: choice('frame.species'),
      grade: choice('frame.grade'),
      treatment: choice('frame.treatment'),
      joists: {
        size: choice('frame.joists.size'),
        spacing: length('frame.joists.spacing'),
        layoutFrom: choice('frame.joists.layoutFrom'),
        overMiddle: choice('frame.joists.overMiddle'),
        longest: length('frame.joists.longest'),
      },
      rimPlies: number('frame.rimPlies'),
      beams: { front: beam('frame.beams.front'), rear: beam('frame.beams.rear') },
      postSize: choice('frame.postSize'),
      blocking: choice('frame.blocking'),
      bracing: choice('frame.bracing'),
      stagger: choice('frame.stagger'),
    },
    ground: {
      tube: length('ground.tube'),
      base: length('ground.base'),
      baseThickness: length('ground.baseThickness'),
      projection: length('ground.projection'),
      standoff: length('ground.standoff'),
      holeRoom: length('ground.holeRoom'),
      moved: text('ground.moved'),
      measured: text('ground.measured'),
      found: text('ground.found'),
      concreteWaste: part('ground.concreteWaste'),
      swell: part('ground.swell'),
      concrete: choice('ground.concrete'),
      placing: choice('ground.placing'),
      fullLoad: number('ground.fullLoad'),
      leastLoad: number('ground.leastLoad'),
      digging: choice('ground.digging'),
      breakerDays: number('ground.breakerDays'),
    },
    decking: {
      size: choice('decking.size'),
      edges: choice('decking.edges'),
      fastening: choice('decking.fastening'),
      angle: number('decking.angle'),
      leans: choice('decking.leans'),
      border: number('decking.border'),
      breakers: text('decking.breakers'),
      parts: text('decking.parts'),
      fascia: choice('decking.fascia'),
      skirting: choice('decking.skirting'),
      overhang: length('decking.overhang'),
      gap: length('decking.gap'),
      wallGap: length('decking.wallGap'),
    },
    stairs: { ...stairs('stairs'), second: stairs('stairs.second'), third: stairs('stairs.third') },
    guard: {
      where: choice('guard.where'),
      height: length('guard.height'),
      infill: choice('guard.infill'),
      cap: choice('guard.cap'),
      postSize: choice('guard.postSize'),
      postSpacing: length('guard.postSpacing'),
      fixing: choice('guard.fixing'),
      holdDown: number('guard.holdDown'),
      gate: value('guard.gate') === true,
    },
    work: {
      crew: choice('work.crew'),
      access: choice('work.access'),
      weather: choice('work.weather'),
      heightAndSize: value('work.heightAndSize') === true,
      markServices: value('work.markServices') === true,
      oldDeck: number('work.oldDeck'),
      oldFootings: number('work.oldFootings'),
      slab: number('work.slab'),
      slabThickness: length('work.slabThickness'),
      slabSteel: value('work.slabSteel') === true,
      haulSpoil: value('work.haulSpoil') === true,
      delivery: value('work.delivery') === true,
      groundCover: value('work.groundCover') === true,
      joistTape: value('work.joistTape') === true,
      coating: number('work.coating'),
    },
    cutting: {
      kerf: length('cutting.kerf'),
      endTrim: length('cutting.endTrim'),
      postAllowance: length('cutting.postAllowance'),
      joistsWild: length('cutting.joistsWild'),
      deckingWild: length('cutting.deckingWild'),
      staggerPenalty: money('cutting.staggerPenalty'),
      handling: money('cutting.handling'),
      keepOffcutsFrom: length('cutting.keepOffcutsFrom'),
      useOffcuts: value('cutting.useOffcuts') === true,
      unusableShare: part('cutting.unusableShare'),
      finishProbability: part('cutting.finishProbability'),
      objective: choice('cutting.objective'),
      objectiveThen: choice('cutting.objectiveThen'),
      onePiece: text('cutting.onePiece'),
      doWithout: text('cutting.doWithout'),
      atMost: text('cutting.atMost'),
    },
    pricing: {
      method: choice('pricing.method'),
      margin: part('pricing.margin'),
      markup: part('pricing.markup'),
      salesTax: part('pricing.salesTax'),
      priceTax: part('pricing.priceTax'),
      contingency: part('pricing.contingency'),
      overhead: part('pricing.overhead'),
      dailySetUp: value('pricing.dailySetUp') === true,
      lines: text('pricing.lines'),
      options: text('pricing.options'),
      budget: money('pricing.budget'),
      book: text('pricing.book'),
    },
    scope: {
      stairs: topic('stairs'),
      guard: topic('guard'),
      'taking away': topic('taking away'),
      hauling: topic('hauling'),
      delivery: topic('delivery'),
      permit: topic('permit'),
      marking: topic('marking'),
      flashing: topic('flashing'),
      fasteners: topic('fasteners'),
      hire: topic('hire'),
      'clean-up': topic('clean-up'),
    },
    costing: {
      begun: text('costing.begun'),
      finished: text('costing.finished'),
      estimate: entries('costing.estimate'),
      price: money('costing.price'),
      hourly: money('costing.hourly'),
      bought: entries('costing.bought'),
      worked: entries('costing.worked'),
      lines: entries('costing.lines'),
    },
  }

  function value(path: FieldPath): FieldValue {
    const found = values.get(path)
    if (found === undefined) throw new RangeError(`no value for the field ${path}`)
    return found
  }
  function text(path: FieldPath): string {
    const found = value(path)
    if (typeof found !== 'string') throw new TypeError(`${path} is not text`)
    return found
  }
  /** The reader lets only the field's own choices through; a test holds them against the job's types. */
  function choice<Choice extends string>(path: FieldPath): Choice {
    return text(path) as Choice
  }
  function number(path: FieldPath): number {
    const found = value(path)
    if (typeof found !== 'number') throw new TypeError(`${path} is not a number`)
    return found
  }
  function length(path: FieldPath): Ticks {
    return ticks(number(path))
  }
  function load(path: FieldPath): Psf {
    return psf(number(path))
  }
  function part(path: FieldPath): Share {
    return share(number(path))
  }
  function money(path: FieldPath): Cents {
    return cents(number(path))
  }
  function beam(path: FieldPath): BeamSpec {
    return {
      set: choice(`${path}.set`),
      size: choice<LumberSize>(`${path}.size`),
      plies: number(`${path}.plies`),
      setback: length(`${path}.setback`),
      setbackStated: given.has(`${path}.setback`),
      posts: number(`${path}.posts`),
      inset: length(`${path}.inset`),
    }
  }
  function stairs(at: FieldPath): StairSpec {
    return {
      kind: choice(`${at}.kind`),
      side: choice(`${at}.side`),
      edge: number(`${at}.edge`),
      align: choice(`${at}.align`),
      place: length(`${at}.place`),
      width: length(`${at}.width`),
      run: length(`${at}.run`),
      stringers: choice(`${at}.stringers`),
      treads: choice(`${at}.treads`),
      risers: choice(`${at}.risers`),
      foot: choice(`${at}.foot`),
      padDepth: length(`${at}.padDepth`),
      padThickness: length(`${at}.padThickness`),
      landingDepth: length(`${at}.landingDepth`),
      handrail: choice(`${at}.handrail`),
    }
  }
  /** The reader lets only entries of the field's own kind through. */
  function entries<Entry extends EntryKinds[EntryKind]>(path: FieldPath): readonly Entry[] {
    return value(path) as readonly Entry[]
  }
  function ground(): Ground {
    if (text('site.ground.kind') === 'spots') {
      return { kind: 'spots', spots: value('site.ground.spots') as readonly Spot[] }
    }
    return {
      kind: 'plane',
      along: { fall: length('site.ground.along.fall'), over: length('site.ground.along.over') },
      away: { fall: length('site.ground.away.fall'), over: length('site.ground.away.over') },
    }
  }
  function topic(name: ScopeTopic): Job['scope'][ScopeTopic] {
    return {
      included: value(`scope.${name}.included`) === true,
      allowance: money(`scope.${name}.allowance`),
    }
  }
}
