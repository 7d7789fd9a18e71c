import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { allows, exceptions } from './licence-terms.ts'
import { noticesText } from './notices.ts'
import { root } from './run-tool.ts'
import { type ShippedPackage, shippedPackages } from './shipped-packages.ts'
import { type Step, together, verdict } from './step.ts'

/** A shipped program has at least its own dependencies; fewer found means that the walk is broken. */
const fewestPackages = 50

/** Packages whose licence does not fit, and exceptions that no package needs any more. */
export function licenceFaults(packages: readonly ShippedPackage[]): readonly string[] {
  const names = new Set(packages.map(({ name }) => name))
  return [
    ...packages
      .filter(({ licence }) => !allows(licence))
      .map(
        ({ name, version, licence }) =>
          `${name} ${version} is under "${licence || 'no stated licence'}", which is not on the list in licence-terms.ts.`,
      ),
    ...Object.keys(exceptions)
      .filter((name) => !names.has(name))
      .map((name) => `The licence exception for ${name} is not needed any more.`),
  ]
}

export const licences: Step = {
  name: 'licences',
  title: 'licences of what ships, and the notices about them',
  run() {
    const packages = shippedPackages(root)
    const few =
      packages.length < fewestPackages
        ? [`Only ${packages.length} packages were found; at least ${fewestPackages} were expected.`]
        : []
    const file = join(root, 'THIRD-PARTY-NOTICES.md')
    const current = existsSync(file) && readFileSync(file, 'utf8') === noticesText(packages)
    return together([
      verdict([...few, ...licenceFaults(packages)].join('\n')),
      verdict(current ? '' : 'THIRD-PARTY-NOTICES.md is out of date: run npm run notices.'),
    ])
  },
}
