import { type FieldPath, fieldAt, type Job } from '../../core/job/index.ts'
import { type PriceBook, productName } from '../../core/pricing/index.ts'

/** A deck of another material: what it is called, and the fields that are stated otherwise for it. */
export interface MaterialChoice {
  readonly key: string
  readonly name: string
  readonly changes: readonly { readonly path: FieldPath; readonly value: string }[]
}

/** Sku of the good that holds grooved boards. */
const CLIP = 'deck-clip'

/**
 * What the price book has to walk on: each size of decking, grooved boards on clips among them, and, where the book has
 * this deck's joists in another wood too, the whole deck of that. The present one stands first.
 */
export function materialChoices(job: Job, book: PriceBook): readonly MaterialChoice[] {
  const present = { size: job.decking.size, edges: job.decking.edges }
  const clips = book.goods.some(({ sku }) => sku === CLIP)
  const choices = (fieldAt('decking.size').choices ?? []).flatMap((size) => [
    { size, edges: 'solid' as const },
    { size, edges: 'grooved' as const },
  ])
  const woods = woodsOf(job, book)
  const found = woods.flatMap((wood) =>
    choices.flatMap(({ size, edges }): readonly MaterialChoice[] => {
      const sold = edges === 'grooved' ? `${size} grooved` : size
      const entry = book.lumber.find(
        ({ product }) =>
          product.size === sold && product.species === wood.species && product.treatment === wood.treatment,
      )
      if (entry === undefined || (edges === 'grooved' && !clips)) return []
      const wanted = {
        'decking.size': size,
        'decking.edges': edges,
        'decking.fastening': edges === 'grooved' ? 'hidden clips' : 'face screws',
        'frame.species': wood.species,
        'frame.treatment': wood.treatment,
      }
      return [
        {
          key: `material ${Object.values(wanted).join(' ')}`,
          name: `${productName(entry.product)}${edges === 'grooved' ? ' on hidden clips' : ''}`,
          changes: Object.entries(wanted).map(([path, value]) => ({ path, value })),
        },
      ]
    }),
  )
  const isPresent = ({ changes }: MaterialChoice) =>
    stated(changes, 'decking.size') === present.size &&
    stated(changes, 'decking.edges') === present.edges &&
    stated(changes, 'frame.species') === job.frame.species &&
    stated(changes, 'frame.treatment') === job.frame.treatment
  return found.toSorted((a, b) => Number(isPresent(b)) - Number(isPresent(a)))
}

function stated(changes: MaterialChoice['changes'], path: FieldPath): string | undefined {
  return changes.find((change) => change.path === path)?.value
}

/** Woods in which the book has this deck's joists, its own first. */
function woodsOf({ frame }: Job, book: PriceBook): readonly Pick<Job['frame'], 'species' | 'treatment'>[] {
  const own = { species: frame.species, treatment: frame.treatment }
  const others = book.lumber
    .map(({ product }) => product)
    .filter(
      ({ size, species, treatment }) =>
        size === frame.joists.size && (species !== own.species || treatment !== own.treatment),
    )
    .map(({ species, treatment }) => ({ species, treatment }))
  return [own, ...others]
}
