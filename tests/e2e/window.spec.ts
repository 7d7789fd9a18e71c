import { readFileSync } from 'node:fs'
import ExcelJS from 'exceljs'
import { expect, test, testAlone } from './program.ts'
import { dollars, figure, flag, open, place, plan, saved, settled } from './window.ts'

test('the first start shows the demonstration: a deck, its order, its price and its checks', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await expect(page.getByRole('button', { name: 'Job Heron Lane: other jobs' })).toBeVisible()
  await expect(plan(page)).toHaveAccessibleName(/23'-6" along the house, 13'-6" deep, 4 posts/)
  await expect(figure(page, 'Price')).toContainText(/\$\d+,\d{3}/)
  await expect(figure(page, 'Order')).toContainText('boards')
  await expect(figure(page, 'Order')).toContainText('least possible, proven')
  await place(page, 'Boards').click()
  await expect(page.getByRole('img', { name: /^Board 1/ }).first()).toBeVisible()
})

test('a width typed digit by digit moves the drawing, the order and the price, and is one step', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  const before = {
    price: await dollars(page, 'Price'),
    order: await figure(page, 'Order').textContent(),
  }
  await flag(page).click()
  await page.keyboard.press('ControlOrMeta+A')
  await page.keyboard.type(`18'`)
  await expect(plan(page)).toHaveAccessibleName(/18'-0" along the house/)
  await page.keyboard.press('Enter')
  await settled(page)
  expect(await dollars(page, 'Price')).not.toBe(before.price)
  expect(await figure(page, 'Order').textContent()).not.toBe(before.order)
  await expect(figure(page, 'Cost')).toContainText('−$')
  await expect(page.getByRole('button', { name: `Undo “Width 18'-0"”` })).toBeEnabled()
  await page.getByRole('button', { name: `Undo “Width 18'-0"”` }).click()
  await settled(page)
  await expect(plan(page)).toHaveAccessibleName(/23'-6" along the house/)
  await expect(figure(page, 'Price')).toContainText(before.price)
})

test('the tape is dragged in 6 in steps; the drag is one step, and Escape gives it up', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  const grip = page.getByRole('slider', { name: 'Width, by dragging' })
  const box = await grip.boundingBox()
  if (!box) throw new Error('the grip has no place on the screen')
  const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 }
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  await page.mouse.move(from.x - 60, from.y, { steps: 6 })
  await page.mouse.move(from.x - 150, from.y, { steps: 6 })
  await page.mouse.up()
  await expect(grip).toHaveAttribute('aria-valuetext', /^(19|20)'-[06]"$/)
  const dragged = await grip.getAttribute('aria-valuetext')
  await expect(plan(page)).toHaveAccessibleName(new RegExp(`${dragged?.replace('"', '.')} along the house`))
  await page.keyboard.press('Control+z')
  await expect(grip).toHaveAttribute('aria-valuetext', `23'-6"`)

  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  await page.mouse.move(from.x + 120, from.y, { steps: 6 })
  await expect(grip).not.toHaveAttribute('aria-valuetext', `23'-6"`)
  await page.keyboard.press('Escape')
  await page.mouse.up()
  await expect(grip).toHaveAttribute('aria-valuetext', `23'-6"`)
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled()
})

test('the tape fills behind the edit, and a better neighbour can be taken', async ({ page, program }) => {
  await open(page, program.link)
  const neighbour = page.getByRole('button', { name: /^\d+'.*: (\+|−|no framing joints)/ }).first()
  await expect(neighbour).toBeVisible({ timeout: 30_000 })
  const text = (await neighbour.textContent()) ?? ''
  const width = text.split(':')[0] ?? ''
  await neighbour.click()
  await expect(flag(page)).toHaveValue(width)
  await settled(page)
  await page.getByRole('button', { name: /^Undo/ }).click()
  await expect(flag(page)).toHaveValue(`23'-6"`)
})

test('undo and redo work by keys from anywhere, and the text being typed keeps its own undo', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await page.getByRole('combobox', { name: 'Size' }).first().selectOption('2x12')
  await expect(page.getByRole('button', { name: /^Undo “Joist size/ })).toBeEnabled()
  await page.keyboard.press('Control+z')
  await expect(page.getByRole('combobox', { name: 'Size' }).first()).toHaveValue('2x10')
  await page.keyboard.press('Control+y')
  await expect(page.getByRole('combobox', { name: 'Size' }).first()).toHaveValue('2x12')
})

test('a wrong width keeps its text, says what is wrong and what would be right, and the deck stays', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await flag(page).fill('24 feets')
  await page.keyboard.press('Tab')
  await expect(flag(page)).toHaveValue('24 feets')
  await expect(flag(page)).toHaveAttribute('aria-invalid', 'true')
  await expect(flag(page)).toHaveAccessibleDescription(/feets.*23'-6" is still in use/)
  await expect(plan(page)).toHaveAccessibleName(/23'-6" along the house/)
  await flag(page).focus()
  await page.keyboard.press('Escape')
  await expect(flag(page)).toHaveValue(`23'-6"`)
})

test('values that contradict each other are named beside their field, and the last deck stays in view', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  const posts = page.getByRole('textbox', { name: 'Posts', exact: true })
  await posts.fill('40')
  await posts.press('Enter')
  await expect(posts).toHaveValue('40')
  await expect(posts).toHaveAttribute('aria-invalid', 'true')
  await expect(plan(page)).toBeVisible()
  await page.keyboard.press('Control+z')
  await expect(posts).toHaveValue('4')
  await expect(posts).toHaveAttribute('aria-invalid', 'false')
})

test('a field goes back to its default and says that it is one', async ({ page, program }) => {
  await open(page, program.link)
  const spacing = page.getByRole('textbox', { name: 'Spacing' })
  await spacing.fill('12')
  await spacing.press('Enter')
  await expect(spacing).toHaveValue('12 in')
  await page.getByRole('button', { name: 'Spacing: back to the default' }).click()
  await expect(spacing).toHaveValue('16 in')
  await expect(spacing).toHaveAccessibleDescription(/^Default\./)
})

test('a member chosen in the list is described with its length, its boards and its checks', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await page.getByText(/^Members, posts and footings/).click()
  await page.getByRole('option', { name: /^Beam ply B1a/ }).click()
  const chosen = page.getByRole('region', { name: /^Chosen: Beam ply B1a/ })
  await expect(chosen).toContainText(`23'-6"`)
  await expect(chosen.getByRole('img', { name: /from board \d+, a \d+/ })).toBeVisible()
  await expect(chosen).toContainText('Beam span')
  await page.keyboard.press('Escape')
  await expect(chosen).toBeHidden()
})

test('after a reload the job is as it was left', async ({ page, program }) => {
  await open(page, program.link)
  await flag(page).fill(`21'`)
  await page.keyboard.press('Enter')
  await saved(page)
  await page.reload()
  await expect(flag(page)).toHaveValue(`21'-0"`)
  await expect(plan(page)).toHaveAccessibleName(/21'-0" along the house/)
})

testAlone(
  'a killed host loses nothing that was saved, says so once, and the page says it is gone',
  async ({ page, program }) => {
    await open(page, program.link)
    await flag(page).fill(`19'`)
    await page.keyboard.press('Enter')
    await saved(page)
    await program.kill()
    await flag(page).fill(`17'`)
    await page.keyboard.press('Enter')
    await expect(plan(page)).toHaveAccessibleName(/17'-0" along the house/)
    await expect(page.getByRole('alert').filter({ hasText: 'Not saved' })).toBeVisible()
    await program.start()
    await page.goto(program.link)
    await expect(flag(page)).toHaveValue(`19'-0"`)
    await expect(page.getByText('was not closed properly')).toBeVisible()
  },
)

test('a window with nothing unsaved follows what another window saves', async ({
  page,
  program,
  context,
}) => {
  await open(page, program.link)
  const other = await context.newPage()
  await other.goto(program.link)
  await expect(flag(other)).toHaveValue(`23'-6"`)
  await flag(other).fill(`22'`)
  await other.keyboard.press('Enter')
  await saved(other)
  await expect(flag(page)).toHaveValue(`22'-0"`)
})

for (const [button, kept] of [
  ['Take the other version', `22'-0"`],
  ['Save mine over it', `21'-0"`],
] as const) {
  test(`where both windows changed the job the later save is refused, and “${button}” settles it`, async ({
    page,
    program,
    context,
  }) => {
    await open(page, program.link)
    const other = await context.newPage()
    await open(other, program.link)
    // what this window saves waits on the way, so that the other's comes first
    let letGo = () => {}
    const held = new Promise<void>((done) => {
      letGo = done
    })
    await page.route('**/rpc', async (route) => {
      if (route.request().postData()?.includes('"jobs.save"')) await held
      await route.continue()
    })
    await flag(page).fill(`21'`)
    const asked = page.waitForRequest((request) => request.postData()?.includes('"jobs.save"') ?? false)
    await page.keyboard.press('Enter')
    await asked
    await flag(other).fill(`22'`)
    await other.keyboard.press('Enter')
    await saved(other)
    letGo()
    await expect(page.getByRole('alert').filter({ hasText: 'Take the other version' })).toBeVisible()
    await expect(flag(page), 'nothing typed is lost before one chooses').toHaveValue(`21'-0"`)
    await page.getByRole('button', { name: button }).click()
    await saved(page)
    await expect(page.getByRole('button', { name: button })).toHaveCount(0)
    await expect(flag(page)).toHaveValue(kept)
    await expect(flag(other)).toHaveValue(kept)
    await page.reload()
    await expect(flag(page)).toHaveValue(kept)
  })
}

test('a new job starts from defaults, shown as such, and the old one can be opened again', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await page.getByRole('button', { name: /^Job Heron Lane/ }).click()
  await page.getByRole('menuitem', { name: 'New job', exact: true }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Make the deck' }).click()
  await expect(page.getByRole('button', { name: /^Job New deck/ })).toBeVisible()
  const width = page.getByRole('complementary').getByRole('textbox', { name: 'Width' })
  await expect(width).toHaveAccessibleDescription(/^Default\./)
  await page.getByRole('button', { name: /^Job New deck/ }).click()
  await page.getByRole('menuitem', { name: /^Heron Lane/ }).click()
  await expect(flag(page)).toHaveValue(`23'-6"`)
})

test('everything can be found by its name', async ({ page, program }) => {
  await open(page, program.link)
  await flag(page).focus()
  await page.keyboard.press('Control+k')
  await page.getByPlaceholder('A command, a field, a member').fill('frost depth told')
  await page.keyboard.press('Enter')
  await expect(page.getByRole('textbox', { name: 'Frost depth told by' })).toBeFocused()
  await page.keyboard.press('Control+/')
  await expect(page.getByRole('dialog', { name: 'Shortcuts' })).toBeVisible()
})

test('the workbook is saved under the job’s name, with the price that the window shows', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  const shown = await dollars(page, 'Price')
  await place(page, 'Papers').click()
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the workbook' }).click(),
  ])
  expect(download.suggestedFilename()).toMatch(/heron.*\.xlsx$/i)
  const book = new ExcelJS.Workbook()
  const bytes = readFileSync(await download.path())
  await book.xlsx.load(
    bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer,
  )
  expect(book.worksheets.length).toBeGreaterThanOrEqual(6)
  const price = Number(shown.replace(/[$,]/g, ''))
  const values = book.worksheets.flatMap((sheet) =>
    (sheet.getSheetValues() as unknown[][])
      .flat()
      .map((cell) => (typeof cell === 'object' && cell !== null && 'result' in cell ? cell.result : cell)),
  )
  expect(values.some((value) => typeof value === 'number' && Math.round(value) === price)).toBe(true)
})

test('sizes are compared on both sides, and a chosen one becomes the deck’s, with one undo back', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Site').click()
  await page.getByRole('button', { name: 'Compare other sizes' }).click()
  const grid = page.getByRole('table', { name: 'Widths across, depths down' })
  const smaller = grid.getByRole('button', { name: /^22'-6" by 13'-6": \$/ })
  await smaller.click({ timeout: 60_000 })
  const width = page.getByRole('main').getByRole('textbox', { name: 'Width' })
  await expect(width).toHaveValue('22\'-6"')
  await page.keyboard.press('Control+z')
  await expect(width).toHaveValue('23\'-6"')
  // the smallest of the sizes is 19'-6" by 9'-6": a dollar pays for none, a million for the largest
  const budget = page.getByRole('textbox', { name: 'Budget' })
  await budget.fill('$1')
  await budget.press('Enter')
  await expect(page.getByText(/^It pays for none of these sizes\./)).toBeVisible()
  await budget.fill('$1,000,000')
  await budget.press('Enter')
  await expect(page.getByText(/^The largest of these sizes that it pays for:/)).toBeVisible()
})
