import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { DEMO_JOB, setField } from '../../../core/job/index.ts'

/** The demo deck in another outline, at a height that leaves its posts room. */
export function shaped(outline: string, moved = ''): Design {
  const statement = [
    ['shape.outline', outline],
    ['size.height', '48 in'],
    ['ground.moved', moved],
  ].reduce((sum, [path = '', value = '']) => setField(sum, path, value), DEMO_JOB)
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}
