import { fieldAt, isRectangle, type Job, statedValue } from '../../../core/job/index.ts'
import { relevantFields } from '../../state/relevant-fields.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { Alerts } from '../bench/alerts.tsx'
import { FieldGroup, without } from '../bench/field-group.tsx'
import { FoldedGroup } from '../bench/folded-group.tsx'
import { NearMisses } from '../bench/near-misses.tsx'
import { SizingPanel, useMendable } from '../frame/sizing-panel.tsx'

/** What the place and the customer set: size, how the deck is held, ground, loads, code. */
export function SiteBench({ job }: { readonly job: Job }) {
  const session = useSession()
  const site = relevantFields(job, ['site'])
  // spots are asked for as soon as they are chosen: until there is one, no deck can be drawn
  const spots = useJob((state) => statedValue(state.history.present, 'site.ground.kind') === 'spots')
  const mendable = useMendable()
  const pick = (...starts: readonly string[]) =>
    site.filter(({ path }) => starts.some((start) => path.startsWith(start)))
  return (
    <>
      <FieldGroup title="Size" fields={relevantFields(job, ['size'])}>
        {isRectangle(job) && (
          <button type="button" className="button" onClick={() => void session.compareSizes()}>
            Compare other sizes
          </button>
        )}
        <NearMisses />
        <Alerts />
      </FieldGroup>
      {mendable > 0 && <SizingPanel />}
      <FoldedGroup title="Shape" fields={relevantFields(job, ['shape'])} />
      <FieldGroup title="Site" fields={pick('site.attachment', 'site.frost', 'site.soil')} />
      <p className="caution">
        <span aria-hidden="true">▲</span> Frost depth, soil and snow are local facts. Ask the building
        department; its code governs.
      </p>
      <FoldedGroup
        title="Slope of the ground"
        fields={spots ? [fieldAt('site.ground.kind'), fieldAt('site.ground.spots')] : pick('site.ground.')}
      />
      <FoldedGroup
        title="Loads"
        fields={pick(
          'site.onDeck',
          'site.liveLoad',
          'site.deadLoad',
          'site.snow',
          'site.concentratedLoad',
          'site.wind',
        )}
      />
      <FoldedGroup
        title="Ledger"
        fields={pick('site.band', 'site.ledgerFastener', 'site.sheathing')}
        shorten={without('Ledger ')}
      />
      <FoldedGroup title="Code" fields={relevantFields(job, ['code'])} />
      <FieldGroup title="Job" fields={relevantFields(job, ['job'])} />
    </>
  )
}
