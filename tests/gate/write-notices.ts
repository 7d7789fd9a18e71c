import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { noticesText } from './notices.ts'
import { root } from './run-tool.ts'
import { shippedPackages } from './shipped-packages.ts'

writeFileSync(join(root, 'THIRD-PARTY-NOTICES.md'), noticesText(shippedPackages(root)))
