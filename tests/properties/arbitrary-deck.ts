import fc from 'fast-check'
import { type JobStatement, setField } from '../../core/job/index.ts'

const inchesText = (min: number, max: number) => fc.integer({ min, max }).map((n) => `${n} in`)
const pick = <T>(...from: T[]) => fc.constantFrom(...from)

const beam = (setback: string) =>
  fc.record({
    size: pick('2x8', '2x10', '2x12'),
    plies: fc.integer({ min: 2, max: 3 }),
    setback: fc.constant(setback),
    posts: fc.integer({ min: 2, max: 4 }),
    inset: inchesText(6, 18),
  })

/** Decks that a builder might draw, on ledgers and free, sized well or badly: most of them can be made to pass. */
export const drawnDeck: fc.Arbitrary<JobStatement> = fc
  .record({
    width: fc.integer({ min: 96, max: 384 }),
    depth: fc.integer({ min: 96, max: 192 }),
    reach: fc.integer({ min: 8, max: 16 }),
  })
  .chain(({ width, depth, reach }) => {
    // joists reach past their beam by an eighth of the depth at most
    const setback = `${Math.max(6, Math.round((depth * reach) / 128))} in`
    return fc.record({
      version: fc.constant(1),
      size: fc.record({
        width: fc.constant(`${width} in`),
        depth: fc.constant(`${depth} in`),
        height: inchesText(40, 110),
      }),
      site: fc.record({
        attachment: pick('ledger', 'freestanding'),
        frostDepth: inchesText(0, 48),
        frostSource: fc.constant('the building department'),
        soil: pick('unknown', 'clay or silt', 'sand'),
        soilBearing: pick(1500, 2000),
        snowLoad: pick(0, 30, 40, 50),
        ground: fc.record({
          away: fc.record({ fall: inchesText(-4, 24), over: fc.constant(`${depth} in`) }),
        }),
      }),
      frame: fc.record({
        joists: fc.record({ size: pick('2x8', '2x10', '2x12'), spacing: pick('12 in', '16 in') }),
        beams: fc.record({ front: beam(setback), rear: beam(setback) }),
        postSize: pick('6x6', '8x8'),
      }),
      ground: fc.record({ tube: pick('12 in', '16 in'), base: pick('16 in', '20 in', '24 in') }),
      decking: fc.record({ size: pick('5/4x6', '2x6') }),
      pricing: fc.record({
        salesTax: pick('0 %', '7.25 %'),
        contingency: pick('0 %', '5 %'),
        overhead: pick('0 %', '10 %'),
      }),
      scope: fc.record({ stairs: fc.record({ allowance: pick('$0', '$1,150') }) }),
      builder: pick('contractor', 'owner'),
    })
  })

/** The same with the front beam among the joists, in the rim's place. */
export const flushDeck: fc.Arbitrary<JobStatement> = drawnDeck.map((statement) => setFlush(statement))

function setFlush(statement: JobStatement): JobStatement {
  return setField(statement, 'frame.beams.front.set', 'flush')
}
