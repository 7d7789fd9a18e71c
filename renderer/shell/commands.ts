import { DEMO_JOB, FIELDS, isRectangle } from '../../core/job/index.ts'
import { DRAWING_VIEWS, LAYER_GROUPS, VIEW_NAMES } from '../state/drawing/look.ts'
import { WHOLE, ZOOM_STEP } from '../state/drawing/view-window.ts'
import { isRelevant } from '../state/relevant-fields.ts'
import { isSpoiltSample } from '../state/sample-job.ts'
import type { Session } from '../state/session.ts'
import { PLACES, type Place, type SessionState } from '../state/session-types.ts'
import { capital, thingsOf } from '../state/things.ts'
import { ABOUT } from '../views/help/help-topics.ts'
import { saveWorkbook } from '../views/papers/save-workbook.ts'
import { openJobFile, saveJobFile } from './job-files.ts'
import { OWN_WINDOW } from './platform.ts'

/** Something that can be done, from the command menu, by a shortcut or by a button: one list for all of them. */
export interface Command {
  readonly id: string
  readonly label: string
  readonly group:
    | 'Work places'
    | 'Job'
    | 'Edit'
    | 'View'
    | 'Drawing'
    | 'Papers'
    | 'Help'
    | 'Fields'
    | 'Members'
  /** keys as written, `Ctrl` standing for the command key on a Mac; the first is shown */
  readonly keys: readonly string[]
  readonly enabled: boolean
  run(): void
}

/** What commands need of the shell itself. */
export interface ShellActions {
  openFind(): void
  openKeys(): void
  openJobs(): void
  openNewJob(): void
  openSettings(): void
  nextPane(backwards: boolean): void
  setTheme(theme: 'auto' | 'light' | 'dark'): void
}

export const PLACE_NAMES: { readonly [place in Place]: string } = {
  site: 'Site',
  frame: 'Frame',
  ground: 'Ground',
  boards: 'Boards',
  price: 'Price',
  papers: 'Papers',
  'cut list': 'Cut list',
  'price book': 'Price book',
}

/** Every command but those of fields and members, in the order of the shortcut sheet. */
export function commandsFor(session: Session, shell: ShellActions, state: SessionState): readonly Command[] {
  const { past, future, gesture } = state.history
  // where the price book is in front, its own changes are taken back
  const inBook = state.place === 'price book'
  const last = inBook ? (state.prices?.lastChange ?? undefined) : (gesture?.label ?? past.at(-1)?.label)
  const next = inBook ? (state.prices?.nextChange ?? undefined) : future[0]?.label
  const command = (
    id: string,
    group: Command['group'],
    label: string,
    keys: readonly string[],
    run: () => void,
    enabled = true,
  ): Command => ({
    id,
    group,
    label,
    keys,
    enabled,
    run,
  })
  return [
    ...PLACES.map((place, index) =>
      command(`go-${place}`, 'Work places', PLACE_NAMES[place], [`Ctrl+Alt+${index + 1}`], () =>
        session.go(place),
      ),
    ),
    command(
      'undo',
      'Edit',
      last === undefined ? 'Undo' : `Undo “${last}”`,
      ['Ctrl+Z'],
      inBook ? () => void session.takePricesBack() : session.undo,
      last !== undefined,
    ),
    command(
      'redo',
      'Edit',
      next === undefined ? 'Redo' : `Redo “${next}”`,
      ['Ctrl+Shift+Z', 'Ctrl+Y'],
      inBook ? () => void session.makePricesAgain() : session.redo,
      next !== undefined,
    ),
    command('width', 'Edit', 'Change the width', ['Ctrl+Alt+W'], () => session.seek('size.width')),
    command('choose-nothing', 'Edit', 'Choose nothing', ['Escape'], () =>
      session.store.getState().why ? session.explain(null) : session.select(null),
    ),
    command('save', 'Job', 'Save now', ['Ctrl+S'], session.saveNow),
    command('jobs', 'Job', 'All jobs…', ['Ctrl+Alt+O'], shell.openJobs),
    command(
      'new-job',
      'Job',
      'New job…',
      OWN_WINDOW ? ['Ctrl+N', 'Ctrl+Alt+N'] : ['Ctrl+Alt+N'],
      shell.openNewJob,
    ),
    command('new-demo', 'Job', 'New job from the demonstration', [], () => session.createJob(DEMO_JOB)),
    command('job-file', 'Job', 'Save the job as a file', ['Ctrl+Shift+S'], () => saveJobFile(session)),
    command('open-file', 'Job', 'Open a job file…', ['Ctrl+O'], () => openJobFile(session)),
    command(
      'reset-sample',
      'Job',
      'Put the sample job back as it was',
      [],
      () => session.resetSample(),
      isSpoiltSample(state.history.present),
    ),
    command('settings', 'Job', 'Settings…', ['Ctrl+,'], shell.openSettings),
    command('find', 'View', 'Find anything…', ['Ctrl+K', 'Ctrl+F'], shell.openFind),
    command('next-pane', 'View', 'Next part of the window', ['F6'], () => shell.nextPane(false)),
    command('last-pane', 'View', 'Part of the window before', ['Shift+F6'], () => shell.nextPane(true)),
    command(
      'sizes',
      'View',
      'Compare other sizes',
      [],
      () => {
        session.go('site')
        void session.compareSizes()
      },
      state.design !== null && isRectangle(state.design.job),
    ),
    command('costing', 'View', 'Job costing: bought and worked', [], () => session.showPrice('costing')),
    command('checks', 'View', 'Show all checks', ['Ctrl+Alt+C'], () => session.explain('checks')),
    ...DRAWING_VIEWS.map((view) =>
      command(`view-${view}`, 'Drawing', `Drawing: ${VIEW_NAMES[view]}`, [], () => session.lookFrom(view)),
    ),
    command('next-view', 'Drawing', 'Next way to look at the deck', ['Ctrl+Alt+V'], session.lookFromNext),
    command('drawing', 'Drawing', 'Go to the drawing', ['Ctrl+Alt+D'], () =>
      document.getElementById('drawing')?.focus(),
    ),
    command('move-chosen', 'Drawing', 'Move what is chosen', ['Ctrl+Alt+M'], () =>
      document.querySelector<HTMLElement>('.grip[tabindex="0"]')?.focus(),
    ),
    command('turn', 'Drawing', 'Solid drawing over the next corner', [], () => session.turnSolid()),
    command('larger', 'Drawing', 'Larger drawing', [], () => session.zoomBy(ZOOM_STEP)),
    command('smaller', 'Drawing', 'Smaller drawing', [], () => session.zoomBy(1 / ZOOM_STEP)),
    command('whole', 'Drawing', 'Whole drawing', [], () => session.lookAt(WHOLE)),
    ...LAYER_GROUPS.map(({ id, name }) => {
      const isHidden = state.look.hidden.includes(id)
      const label = `${isHidden ? 'Show' : 'Hide'} in the drawing: ${name.toLowerCase()}`
      return command(`layer-${id}`, 'Drawing', label, [], () => session.showLayer(id, isHidden))
    }),
    command('light', 'View', 'Light', [], () => shell.setTheme('light')),
    command('dark', 'View', 'Dark', [], () => shell.setTheme('dark')),
    command('system', 'View', 'Light or dark as the system has it', [], () => shell.setTheme('auto')),
    command(
      'workbook',
      'Papers',
      'Save the workbook',
      ['Ctrl+Alt+S'],
      () => saveWorkbook(session),
      !state.making,
    ),
    command('print', 'Papers', 'Print the drawing…', ['Ctrl+P'], () => window.print()),
    command('help', 'Help', 'Help', ['F1'], () => session.readHelp('')),
    command('keys', 'Help', 'Shortcuts', ['Ctrl+/'], shell.openKeys),
    command('about', 'Help', 'About Kerfwright', [], () => session.readHelp(ABOUT)),
  ]
}

/** Fields and members, for the command menu only: there are too many to press keys for. */
export function findable(session: Session, state: SessionState): readonly Command[] {
  const { design } = state
  if (!design) return []
  const fields = FIELDS.filter(({ path }) => isRelevant(path, design.job)).map(
    ({ path, label, section }): Command => ({
      id: `field-${path}`,
      label: `${label} (${section})`,
      group: 'Fields',
      keys: [],
      enabled: true,
      run: () => session.seek(path),
    }),
  )
  const members = thingsOf(design).map(
    ({ id, label }): Command => ({
      id: `thing-${id}`,
      label: capital(label),
      group: 'Members',
      keys: [],
      enabled: true,
      run: () => session.select(id),
    }),
  )
  return [...fields, ...members]
}
