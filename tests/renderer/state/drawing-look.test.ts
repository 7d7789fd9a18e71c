import { describe, expect, test } from 'vitest'
import { FIRST_LOOK, printLook, readLook, shownLayers } from '../../../renderer/state/drawing/look.ts'
import { openedSession } from '../../fixtures/opened-session.ts'

describe('the layers of the drawing', () => {
  test('are shown but for those of a hidden group', () => {
    expect(shownLayers(['house', 'footings', 'beams', 'posts', 'marks'], ['beams', 'marks'])).toEqual([
      'house',
      'footings',
    ])
  })

  test('are hidden and shown again one group at a time, and stay so at the next work place', async () => {
    const { session, state } = await openedSession()
    session.showLayer('marks', false)
    session.showLayer('decking', false)
    session.go('site')
    expect(state().look.hidden).toEqual(['decking', 'marks'])
    session.showLayer('marks', true)
    expect(state().look.hidden).toEqual(['decking'])
  })
})

describe('a look that was kept', () => {
  test('comes back, but for where it was zoomed to', () => {
    const look = {
      ...FIRST_LOOK,
      view: 'section',
      hidden: ['marks'],
      windows: { section: { zoom: 2, x: 0, y: 0 } },
    } as const
    expect(readLook(printLook(look))).toEqual({ ...look, windows: {} })
  })

  test('is the first one where nothing was kept, or something else', () => {
    for (const text of [null, '', 'no JSON', '7', 'null', '{"view":"moon","hidden":"all"}'])
      expect(readLook(text)).toEqual(FIRST_LOOK)
  })

  test('is zoomed per view, about the middle', async () => {
    const { session, state } = await openedSession()
    session.zoomBy(2)
    session.lookFrom('section')
    expect(state().look.windows).toEqual({ plan: { zoom: 2, x: 0.5, y: 0.5 } })
    session.lookFromNext()
    expect(state().look.view).toBe('front')
  })
})
