import { expect, test } from './program.ts'

test('the printed link opens the program, with nothing on the console and nothing from elsewhere', async ({
  page,
  program,
}) => {
  const said: string[] = []
  const foreign: string[] = []
  page.on('console', (message) => {
    if (message.type() !== 'log') said.push(message.text())
  })
  page.on('pageerror', (fault) => said.push(fault.message))
  page.on('request', (request) => {
    const { origin, protocol } = new URL(request.url())
    if (origin !== new URL(program.link).origin && protocol !== 'data:' && protocol !== 'blob:')
      foreign.push(request.url())
  })
  await page.goto(program.link)
  await expect(page.getByRole('slider').first()).toBeVisible()
  await expect(page).toHaveTitle(/Kerfwright/)
  expect(new URL(page.url()).search, 'the token does not stay in the address').toBe('')
  expect(said).toEqual([])
  expect(foreign).toEqual([])
})

test('script that finds its way into the page is not run', async ({ page, program }) => {
  await page.goto(program.link)
  await expect(page.getByRole('slider').first()).toBeVisible()
  const ran = await page.evaluate(async () => {
    const script = document.createElement('script')
    script.textContent = 'window.injected = true'
    document.body.append(script)
    // what is wrong with the picture is told to listeners in order: the one in the markup first
    document.body.insertAdjacentHTML('beforeend', '<img src="x:" onerror="window.injected = true">')
    await new Promise((done) => document.body.lastElementChild?.addEventListener('error', done))
    return 'injected' in window
  })
  expect(ran).toBe(false)
})

test('a page of another site learns nothing, though the browser holds the session', async ({
  page,
  program,
  context,
}) => {
  await page.goto(program.link)
  await expect(page.getByRole('slider').first()).toBeVisible()
  const { origin } = new URL(program.link)
  const other = await context.newPage()
  await other.route('http://elsewhere.test/**', (route) =>
    route.fulfill({ contentType: 'text/html', body: '<title>elsewhere</title>' }),
  )
  await other.goto('http://elsewhere.test/')
  const outcome = await other.evaluate(async (host) => {
    const attempt = (path: string, options: RequestInit) =>
      fetch(host + path, options).then(
        (answer) => (answer.type === 'opaque' ? 'opaque' : String(answer.status)),
        () => 'failed',
      )
    const framed = await new Promise<string>((done) => {
      const frame = document.createElement('iframe')
      frame.onload = () => done(frame.contentDocument === null ? 'no access' : 'access')
      frame.src = `${host}/`
      document.body.append(frame)
    })
    const body = '{"jsonrpc":"2.0","id":1,"method":"jobs.list","params":{}}'
    return {
      framed,
      read: await attempt('/', { credentials: 'include' }),
      called: await attempt('/rpc', {
        method: 'POST',
        credentials: 'include',
        headers: { 'content-type': 'application/json' },
        body,
      }),
    }
  }, origin)
  expect(outcome).toEqual({ framed: 'no access', read: 'failed', called: 'failed' })
})

test('two copies in one browser do not sign each other out', async ({ page, program, context }) => {
  const { startProgram } = await import('./start-program.ts')
  const second = await startProgram(program.storeFolder)
  try {
    await page.goto(program.link)
    await expect(page.getByRole('slider').first()).toBeVisible()
    const other = await context.newPage()
    await other.goto(second.link)
    await expect(other.getByRole('slider').first()).toBeVisible()
    await page.reload()
    await expect(page.getByRole('slider').first()).toBeVisible()
  } finally {
    await second.stop()
  }
})
