import { expect, test } from '../e2e/program.ts'
import { axeFaults } from './axe.ts'

for (const colorScheme of ['light', 'dark'] as const) {
  const colours = colorScheme === 'dark'
  test(`what opens over the window meets WCAG 2.2 AA as far as axe can tell, ${colorScheme}`, async ({
    page,
    program,
  }) => {
    test.setTimeout(180_000)
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' })
    await page.goto(program.link)
    await expect(page.getByRole('slider').first()).toBeVisible()

    await page.keyboard.press('Control+k')
    await expect(page.getByPlaceholder('A command, a field, a member')).toBeFocused()
    expect(await axeFaults(page, { colours, within: '[role=dialog]' }), 'find anything').toEqual([])
    await page.keyboard.press('Escape')

    await page.keyboard.press('Control+/')
    await expect(page.getByRole('dialog', { name: 'Shortcuts' })).toBeVisible()
    expect(await axeFaults(page, { colours, within: '[role=dialog]' }), 'shortcuts').toEqual([])
    await page.keyboard.press('Escape')
    await expect(page.getByRole('dialog')).toHaveCount(0)

    await page.getByRole('button', { name: /^Job / }).click()
    await expect(page.getByRole('menuitem', { name: 'New job', exact: true })).toBeVisible()
    expect(await axeFaults(page, { colours, within: '[role=menu]' }), 'jobs').toEqual([])
    await page.keyboard.press('Escape')

    await page.keyboard.press('Control+Alt+n')
    await expect(page.getByRole('dialog', { name: 'New job: five questions' })).toBeVisible()
    expect(await axeFaults(page, { colours, within: '[role=dialog]' }), 'new job').toEqual([])
    await page.keyboard.press('Escape')
    await expect(page.getByRole('dialog')).toHaveCount(0)

    for (const [keys, title] of [
      ['F1', 'Help'],
      ['Control+,', 'Settings'],
      ['Control+Alt+o', 'Jobs'],
    ] as const) {
      await page.keyboard.press(keys)
      await expect(page.getByRole('dialog', { name: title })).toBeVisible()
      expect(await axeFaults(page, { colours, within: '[role=dialog]' }), title).toEqual([])
      await page.keyboard.press('Escape')
      await expect(page.getByRole('dialog')).toHaveCount(0)
    }

    const width = page.getByRole('main').getByRole('textbox', { name: 'Width' })
    await width.fill('nothing')
    await page.keyboard.press('Tab')
    await expect(width).toHaveAttribute('aria-invalid', 'true')
    expect(await axeFaults(page, { colours }), 'a wrong width').toEqual([])

    await page
      .getByRole('contentinfo')
      .getByRole('button', { name: /^Checks/ })
      .click()
    expect(await axeFaults(page, { colours, within: 'aside' }), 'all checks').toEqual([])

    await page.getByRole('contentinfo').getByRole('button', { name: /^Cost/ }).click()
    await page.locator('.why-chain summary').filter({ hasText: 'Overhead' }).click()
    await expect(page.getByRole('button', { name: /^Overhead: / })).toBeVisible()
    expect(await axeFaults(page, { colours, within: 'aside' }), 'why of the cost').toEqual([])

    const places = page.getByRole('navigation', { name: 'Work places' })
    await places.getByRole('button', { name: 'Price', exact: true }).click()
    const file = { name: 'yard.json', mimeType: 'application/json', buffer: Buffer.from('{ "version": 1 }') }
    await page.getByLabel('File of a price book').setInputFiles(file)
    await expect(page.getByText('The file was not taken')).toBeVisible()
    expect(await axeFaults(page, { colours }), 'faults of a price book').toEqual([])
  })
}
