// Which part may import which. A rule that fires names the part and, in its comment, what is allowed instead.
// Every rule is proved by tests/fixtures/canary, which breaks each of them once.

const stages = [
  'units',
  'geometry',
  'data',
  'job',
  'layout',
  'frame',
  'rules',
  'stairs',
  'guard',
  'checks',
  'takeoff',
  'cutting',
  'pricing',
  'cut-list',
  'price-list',
  'compare',
  'costing',
  'sizing',
  'ground',
  'papers',
]

const rule = (name, comment, from, to) => ({ name, comment, severity: 'error', from, to })

const stageArrows = stages
  .slice(0, -1)
  .map((stage, index) =>
    rule(
      `core-${stage}-sees-only-earlier-stages`,
      `core/${stage} may import ${['itself', ...stages.slice(0, index)].join(', ')}.`,
      { path: `^core/${stage}/` },
      { path: `^core/(${stages.slice(index + 1).join('|')})/` },
    ),
  )

export default {
  forbidden: [
    ...stageArrows,
    rule(
      'core-stages-before-estimate-do-not-see-it',
      'core/estimate.ts composes the stages up to pricing; only compare, papers and the layers above see it.',
      { path: `^core/(${stages.slice(0, stages.indexOf('compare')).join('|')})/` },
      { path: '^core/[^/]+[.]ts$' },
    ),
    rule(
      'core-estimate-sees-stages-up-to-pricing',
      'The files at the root of core may import the stages up to pricing and each other.',
      { path: '^core/[^/]+[.]ts$' },
      { path: '^core/(cut-list|price-list|compare|costing|sizing|ground|papers)/' },
    ),
    rule(
      'core-takeoff-and-checks-are-apart',
      'Quantities do not depend on whether a check passes: takeoff may import rules and the stages up to frame.',
      { path: '^core/takeoff/' },
      { path: '^core/checks/' },
    ),
    rule(
      'core-rules-see-units-and-data',
      'A rule is a formula or a table look-up: core/rules may import units and data.',
      { path: '^core/rules/' },
      { path: '^core/', pathNot: '^core/(rules|units|data)/' },
    ),
    rule(
      'core-audit-sees-units-and-plan-types',
      'The auditor shares no code with the optimiser: it may import units and core/cutting/types.ts.',
      { path: '^core/cutting/audit/' },
      { path: '^core/', pathNot: '^core/(units/|cutting/audit/|cutting/types[.]ts$)' },
    ),
    rule(
      'core-audit-never-reaches-solve',
      'Not through other files either.',
      { path: '^core/cutting/audit/' },
      { path: '^core/cutting/solve/', reachable: true },
    ),
    rule(
      'core-stages-meet-at-the-index',
      'Import another stage through its index.ts.',
      { path: '^core/([^/]+)/' },
      { path: '^core/[^/]+/', pathNot: ['^core/$1/', '^core/[^/]+/index[.]ts$'] },
    ),
    rule(
      'core-stands-alone',
      'core may import core.',
      { path: '^core/' },
      { path: '^(shared|main|renderer|tests|scripts)/' },
    ),
    rule(
      'core-has-no-node',
      'core is pure: no disk, no clock, no process. Pass in what it needs.',
      { path: '^core/' },
      { dependencyTypes: ['core'] },
    ),
    rule(
      'core-has-one-package',
      'core/job may import jsonc-parser, core/geometry clipper2-ts, core/papers bidi-js; nothing else of core imports a package.',
      { path: '^core/' },
      { path: 'node_modules/', pathNot: 'node_modules/(jsonc-parser|clipper2-ts|bidi-js)/' },
    ),
    rule(
      'core-reads-json-in-job-only',
      'Job files are read in core/job.',
      { path: '^core/', pathNot: '^core/job/' },
      { path: 'node_modules/jsonc-parser/' },
    ),
    rule(
      'core-clips-in-geometry-only',
      'Polygons are clipped in core/geometry.',
      { path: '^core/', pathNot: '^core/geometry/' },
      { path: 'node_modules/clipper2-ts/' },
    ),
    rule(
      'core-turns-writing-in-papers-only',
      'Lines that are written from the right are turned in core/papers.',
      { path: '^core/', pathNot: '^core/papers/' },
      { path: 'node_modules/bidi-js/' },
    ),
    rule(
      'shared-sees-core',
      'shared may import shared and core.',
      { path: '^shared/' },
      { path: '^(main|renderer|tests|scripts)/' },
    ),
    rule(
      'main-sees-shared-and-core',
      'main may import main, shared and core; the window is reached through the contract.',
      { path: '^main/' },
      { path: '^(renderer|tests|scripts)/' },
    ),
    rule(
      'renderer-sees-shared-and-core',
      'renderer may import renderer, shared and core; the machine is reached through the contract.',
      { path: '^renderer/' },
      { path: '^(main|tests|scripts)/' },
    ),
    rule(
      'renderer-has-no-node',
      'The window is sandboxed: ask main through the contract.',
      { path: '^renderer/' },
      { dependencyTypes: ['core'] },
    ),
    rule(
      'main-doors-see-app-and-log',
      'A door (host, desktop, cli) may import itself, main/app and main/log.',
      { path: '^main/(host|desktop|cli)/' },
      { path: '^main/', pathNot: ['^main/(app|log)/', '^main/$1/'] },
    ),
    rule(
      'main-inner-parts-know-no-door',
      'What lies behind the contract does not know who asks.',
      { path: '^main/', pathNot: '^main/(host|desktop|cli)/' },
      { path: '^main/(host|desktop|cli)/' },
    ),
    rule(
      'main-store-and-exports-stand-alone',
      'Only main/app joins store, workers and exports.',
      { path: '^main/(store|workers|exports|log)/' },
      { path: '^main/', pathNot: '^main/$1/' },
    ),
    rule(
      'electron-is-in-desktop-only',
      'Everything but main/desktop must run without Electron.',
      { path: '.', pathNot: '^main/desktop/' },
      { path: 'node_modules/electron/' },
    ),
    rule(
      'main-runs-on-dependencies',
      'What main imports at run time stands in "dependencies" of package.json.',
      { path: '^main/', pathNot: '^main/desktop/' },
      { dependencyTypes: ['npm-dev'] },
    ),
    rule(
      'renderer-parts-know-no-job',
      'renderer/parts may import itself and core/units.',
      { path: '^renderer/parts/' },
      { path: '^(renderer|core|shared)/', pathNot: '^(renderer/parts|core/units)/' },
    ),
    rule(
      'renderer-views-know-no-shell',
      'renderer/views may import views, parts, drawing, state and client.',
      { path: '^renderer/views/' },
      { path: '^renderer/', pathNot: '^renderer/(views|parts|drawing|state|client)/' },
    ),
    rule(
      'renderer-drawing-knows-no-state',
      'renderer/drawing turns primitives into SVG: it may import itself, parts and core.',
      { path: '^renderer/drawing/' },
      { path: '^renderer/', pathNot: '^renderer/(drawing|parts)/' },
    ),
    rule(
      'renderer-state-knows-no-view',
      'renderer/state and renderer/client may import each other and what lies below them.',
      { path: '^renderer/(state|client)/' },
      { path: '^renderer/(shell|views|parts|drawing)/' },
    ),
    rule(
      'no-circles',
      'Two files that run each other are one idea or three; types may look both ways.',
      {},
      { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    ),
    rule(
      'every-import-resolves',
      'An import that leads nowhere is checked by no rule.',
      {},
      { couldNotResolve: true },
    ),
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.base.json' },
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
    },
  },
}
