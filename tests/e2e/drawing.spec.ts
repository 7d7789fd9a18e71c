import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect, test } from './program.ts'
import { figure, open, place, plan, settled } from './window.ts'

const post = (page: Page) => page.getByRole('button', { name: /^Post 2, / })
const placeOf = async (page: Page) =>
  /, (.*) from/.exec((await post(page).getAttribute('aria-label')) ?? '')?.[1]

/** Presses on something, and draws it so far, px. */
async function draw(page: Page, dx: number, dy: number, from: { x: number; y: number }) {
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  await page.mouse.move(from.x + dx, from.y + dy, { steps: 8 })
}

async function middleOf(page: Page, name: RegExp) {
  const box = await page.getByRole('button', { name }).boundingBox()
  if (!box) throw new Error(`${name} has no place on the screen`)
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 }
}

test('a post is drawn along its beam: the deck follows, Escape gives it up, and it is one step', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  const before = await figure(page, 'Checks').textContent()
  const from = await middleOf(page, /^Post 2, /)
  expect(await placeOf(page)).toBe(`8'-2"`)

  await draw(page, 60, 3, from)
  await expect(page.getByText(/from the beam’s left end$/).first()).toBeVisible()
  expect(await placeOf(page)).not.toBe(`8'-2"`)
  await page.keyboard.press('Escape')
  await page.mouse.up()
  await expect(post(page)).toHaveAccessibleName(/8'-2" from/)
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled()

  await draw(page, 60, 3, from)
  await page.mouse.up()
  await settled(page)
  const at = await placeOf(page)
  expect(at).not.toBe(`8'-2"`)
  // the bays at its sides changed, and what the beam is asked to span with them
  expect(await figure(page, 'Checks').textContent()).not.toBe(before)
  await expect(
    page.getByRole('button', { name: `Undo “Post 2 ${at} from the beam’s left end”` }),
  ).toBeVisible()
  await page.keyboard.press('Control+z')
  await expect(post(page)).toHaveAccessibleName(/8'-2" from/)
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled()
})

test('the same by keys alone: a post, the beam and an edge are chosen and moved by steps', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await page.keyboard.press('Control+Alt+d')
  await expect(page.getByRole('group', { name: 'Drawing', exact: true })).toBeFocused()
  await page.keyboard.press('Control+Alt+m')
  await expect(page.getByRole('button', { name: /^Right edge, 23'-6" width/ })).toBeFocused()
  await page.keyboard.press('ArrowRight')
  await expect(plan(page)).toHaveAccessibleName(/24'-0" along the house/)
  await page.keyboard.press('Escape')
  await expect(plan(page)).toHaveAccessibleName(/23'-6" along the house/)

  for (let n = 0; n < 4; n++) await page.keyboard.press('PageDown')
  await expect(post(page)).toBeFocused()
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('Shift+ArrowRight')
  await page.keyboard.press('Enter')
  await expect(post(page)).toHaveAccessibleName(/8'-7" from/)
  await expect(
    page.getByRole('button', { name: 'Undo “Post 2 8\'-7" from the beam’s left end”' }),
  ).toBeVisible()
  // the same by typing, in the bench beside what is chosen
  const typed = page.getByRole('textbox', { name: 'From the beam’s left end' })
  await typed.fill(`9'`)
  await typed.press('Enter')
  await expect(post(page)).toHaveAccessibleName(/9'-0" from/)
})

test('the deck is looked at from three sides, larger and smaller, and in layers', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  const drawing = page.getByRole('group', { name: 'Drawing', exact: true })
  await page.getByRole('radio', { name: 'Section' }).check()
  await expect(page.getByRole('img', { name: /^Section to scale/ })).toBeVisible()
  // what is chosen in one view is chosen in the others
  await page.getByText('Members, posts and footings').click()
  await page.getByRole('option', { name: 'Post 1', exact: true }).click()
  await expect(page.locator('.sheet .is-selected').first()).toBeVisible()
  await page.getByRole('radio', { name: 'Front' }).check()
  await expect(page.getByRole('img', { name: /^Elevation to scale, seen from the yard/ })).toBeVisible()
  await expect(page.locator('.sheet .is-selected').first()).toBeVisible()

  await page.getByRole('radio', { name: 'Plan' }).check()
  const wide = async () => (await page.locator('.sheet .fill-house').first().boundingBox())?.width ?? 0
  const whole = await wide()
  const text = await page.locator('.dimension-text').first().boundingBox()
  await page.keyboard.press('Escape')
  await drawing.focus()
  await page.keyboard.press('+')
  await page.keyboard.press('+')
  expect(await wide()).toBeGreaterThan(1.5 * whole)
  const larger = await page.locator('.dimension-text').first().boundingBox()
  expect(larger?.height).toBeCloseTo(text?.height ?? 0, 1)
  await page.keyboard.press('0')
  expect(await wide()).toBe(whole)
  const middle = await drawing.boundingBox()
  if (!middle) throw new Error('there is no drawing')
  await page.mouse.move(middle.x + 300, middle.y + 150)
  await page.mouse.wheel(0, -400)
  await expect.poll(wide).toBeGreaterThan(1.5 * whole)
  await page.getByRole('button', { name: 'All of it' }).click()

  await page.getByRole('button', { name: 'Layers' }).click()
  await page.getByRole('checkbox', { name: 'Dimensions' }).uncheck()
  await expect(page.locator('.dimension-text')).toHaveCount(0)
  const { violations } = await new AxeBuilder({ page })
    .include('.plan')
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze()
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(' ')}`)).toEqual(
    [],
  )
  await page.keyboard.press('Escape')
  await place(page, 'Site').click()
  await page.reload()
  await expect(page.getByRole('button', { name: 'Layers, 1 hidden' })).toBeVisible()
})

test('on paper the drawing is black and white, and what fails is told by its weight', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await page.getByRole('combobox', { name: 'Size' }).first().selectOption('2x6')
  await settled(page)
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' })
  const shapes = await page
    .locator('.sheet svg :is(line, rect, circle, polygon, text):not(.hit)')
    .evaluateAll((all) =>
      all.map((shape) => {
        const { stroke, fill, strokeWidth } = getComputedStyle(shape)
        const isGrey = [stroke, fill].every((colour) => {
          const parts = (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number)
          return Math.max(0, ...parts) - Math.min(255, ...parts) <= 2 || parts.length === 0
        })
        return { name: shape.getAttribute('class') ?? '', isGrey, width: Number.parseFloat(strokeWidth) }
      }),
    )
  expect(shapes.length).toBeGreaterThan(50)
  expect([...new Set(shapes.filter(({ isGrey }) => !isGrey).map(({ name }) => name))]).toEqual([])
  const joists = shapes.filter(({ name }) => name.includes('on-joists') && name.includes('fill-wood'))
  const widths = (fails: boolean) =>
    joists.filter(({ name }) => name.includes('is-fails') === fails).map(({ width }) => width)
  expect(widths(true).length).toBeGreaterThan(0)
  expect(Math.min(...widths(true))).toBeGreaterThan(Math.max(0, ...widths(false)))
})

test('figures that are being worked out again look it, and come back when they are there', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  let letGo = () => {}
  const held = new Promise<void>((done) => {
    letGo = done
  })
  await page.route('**/rpc', async (route) => {
    if (route.request().postData()?.includes('"estimate.run"')) await held
    await route.continue()
  })
  const look = () =>
    page
      .locator('.sill .figure-value')
      .first()
      .evaluate((shown) => getComputedStyle(shown).color)
  const fresh = await look()
  const width = page.getByRole('main').getByRole('textbox', { name: 'Width' })
  const sill = page.getByRole('contentinfo', { name: 'The estimate' })
  const cost = sill.locator('.figure-value').first()
  const before = (await cost.textContent()) ?? ''
  await width.fill(`21'`)
  await width.press('Enter')
  await expect(sill).toHaveAttribute('aria-busy', 'true')
  await expect.poll(look).not.toBe(fresh)
  // meanwhile first plans are priced, and look as unsure as the figures before
  await expect(cost).not.toHaveText(before)
  await expect(sill).toHaveAttribute('aria-busy', 'true')
  // work over a second is told, with a way to end it; the window takes edits meanwhile
  await expect(sill.getByText('Cutting and pricing.')).toBeVisible()
  await expect(sill.getByRole('button', { name: 'Stop here' })).toBeVisible()
  await width.fill(`22'`)
  await width.press('Enter')
  await expect(plan(page)).toHaveAccessibleName(/22'-0" along the house/)
  letGo()
  await settled(page)
  await expect.poll(look).toBe(fresh)
})

test('the solid drawing goes over the next corner by dragging, by arrow keys and by its button, and needs no graphics card', async ({
  page,
  program,
}) => {
  // WebGL is taken away before the page starts: the drawing is lines and faces of the page itself
  await page.addInitScript(() => {
    HTMLCanvasElement.prototype.getContext = () => null
  })
  await open(page, program.link)
  await place(page, 'Frame').click()
  await page.getByRole('radio', { name: 'Solid' }).check({ force: true })
  const solid = page.getByRole('img', { name: /^The deck as it stands, seen from above/ })
  await expect(solid).toBeVisible()
  const faces = () => solid.locator('polygon').first().getAttribute('points')
  const first = await faces()
  const box = await solid.boundingBox()
  if (!box) throw new Error('the solid drawing has no place on the screen')
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 4 }

  await draw(page, -100, 0, middle)
  await page.mouse.up()
  await expect.poll(faces).not.toBe(first)
  await draw(page, 100, 0, middle)
  await page.mouse.up()
  await expect.poll(faces).toBe(first)

  await page.getByRole('group', { name: 'Drawing', exact: true }).focus()
  await page.keyboard.press('ArrowRight')
  await expect.poll(faces).not.toBe(first)
  await page.keyboard.press('ArrowLeft')
  await expect.poll(faces).toBe(first)
  for (let corner = 0; corner < 4; corner += 1) await page.getByRole('button', { name: 'Turn' }).click()
  await expect.poll(faces).toBe(first)
})
