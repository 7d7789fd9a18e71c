import { describe, expect, it } from 'vitest'
import { design } from '../../../core/estimate.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { cutJobs, type PriceBook, SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { type StatedJob, workedJob } from '../../fixtures/worked-job.ts'

function designOf(statement: StatedJob): Design {
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

const stated = workedJob()
const frame = stated.frame as StatedJob
const jobsOf = (statement: StatedJob, book: PriceBook = SAMPLE_BOOK) => cutJobs(designOf(statement), book)
const without = (size: string): PriceBook => ({
  ...SAMPLE_BOOK,
  lumber: SAMPLE_BOOK.lumber.filter((entry) => entry.product.size !== size),
})

describe('cutting jobs of a deck', () => {
  it('holds every piece and every run once, in the class it is made of', () => {
    const made = designOf(stated)
    const { classes, faults } = cutJobs(made, SAMPLE_BOOK)
    expect(faults).toEqual([])
    expect(classes.map(({ product }) => product.size).sort()).toEqual(['2x10', '2x12', '5/4x6', '6x6'])
    const pieces = classes.flatMap(({ cutJob }) => cutJob.pieces.map((piece) => piece.id))
    expect(pieces.sort()).toEqual(made.takeoff.pieces.map((piece) => piece.id).sort())
    const members = classes.flatMap(({ cutJob }) =>
      cutJob.runs.flatMap((run) => run.members.map((one) => one.id)),
    )
    expect(members.sort()).toEqual(made.takeoff.runs.flatMap((run) => run.memberIds).sort())
  })

  it('cuts the decking longer by what it runs wild, and only where no border holds its ends', () => {
    const coursesOf = (more: StatedJob) =>
      jobsOf({ ...stated, cutting: { deckingWild: '2 in' }, ...more })
        .classes.flatMap(({ cutJob }) => cutJob.runs)
        .filter(({ id }) => id.startsWith('run-decking'))
    const finished = designOf(stated).takeoff.runs.find(({ id }) => id === 'run-decking')
    expect(coursesOf({}).map(({ length, wild }) => [length, wild])).toEqual([
      [(finished?.length ?? 0) + 64, 64],
    ])
    expect(coursesOf({ decking: { border: 1 } }).some(({ wild }) => wild !== undefined)).toBe(false)
    const { frame: framed } = designOf({
      ...stated,
      cutting: { deckingWild: '2 in' },
      decking: { border: 1 },
    })
    expect(framed.layoutNotes.some((note) => note.startsWith('The decking does not run wild'))).toBe(true)
  })

  it('offers each product in the lengths and at the prices of the book', () => {
    const beam = jobsOf(stated).classes.find(({ product }) => product.size === '2x12')
    const listed = SAMPLE_BOOK.lumber.find((entry) => entry.product.size === '2x12')
    expect(beam?.cutJob.stock.map(({ id, length, price }) => ({ code: id, length, price }))).toEqual(
      listed?.stock,
    )
  })

  it('makes a joint cost its material and its minutes at the labour rate', () => {
    const beam = jobsOf(stated).classes.find(({ product }) => product.size === '2x12')
    // $2.50 and 6 minutes at $60 an hour
    expect(beam?.cutJob.runs[0]?.points.map((point) => point.cost)).toEqual([850, 850])
  })

  it('makes a joint cost an owner builder its material alone', () => {
    const beam = jobsOf({ ...stated, builder: 'owner' }).classes.find(
      ({ product }) => product.size === '2x12',
    )
    expect(beam?.cutJob.runs[0]?.points.map((point) => point.cost)).toEqual([250, 250])
  })

  it('prices two plies jointed at one post where staggering is preferred, and forbids them where it is required', () => {
    const beamPoint = (stagger: string) =>
      jobsOf({ ...stated, frame: { ...frame, stagger } }).classes.find(
        ({ product }) => product.size === '2x12',
      )?.cutJob.runs[0]?.points[0]
    expect(beamPoint('preferred')).toMatchObject({ cap: 1, excess: 2500 })
    expect(beamPoint('required')).toMatchObject({ cap: 1, excess: null })
    expect(beamPoint('none')).toMatchObject({ cap: null, excess: null })
  })

  it('names a product that the book does not list, and plans the others', () => {
    const { classes, faults } = jobsOf(stated, without('6x6'))
    expect(classes.map(({ product }) => product.size)).not.toContain('6x6')
    expect(faults).toHaveLength(1)
    expect(faults[0]?.message).toContain('does not list 6x6 Southern Pine No.2, treated')
    expect(faults[0]?.fix).toContain('Add 6x6 Southern Pine No.2, treated')
  })

  it('says which species of a size the book does have', () => {
    const { faults } = jobsOf({ ...stated, frame: { ...frame, species: 'HF' } })
    expect(faults.map((fault) => fault.message).join()).toContain('It has 2x10 Southern Pine No.2, treated.')
  })

  it('names a product that is listed without any length', () => {
    const emptied = SAMPLE_BOOK.lumber.map((entry) =>
      entry.product.size === '6x6' ? { ...entry, stock: [] } : entry,
    )
    const { faults } = jobsOf(stated, { ...SAMPLE_BOOK, lumber: emptied })
    expect(faults[0]?.message).toContain('but no length of it')
  })

  it('names a kind of joint that the book does not price', () => {
    const joints = SAMPLE_BOOK.joints.filter((joint) => joint.kind !== 'rim')
    const { faults } = jobsOf(stated, { ...SAMPLE_BOOK, joints })
    expect(faults).toEqual([
      {
        subject: 'rim joint',
        message: `The price book "${SAMPLE_BOOK.name}" does not say what a rim joint costs.`,
        fix: 'Add a "rim" entry under joints: its material and its minutes.',
      },
    ])
  })
})
