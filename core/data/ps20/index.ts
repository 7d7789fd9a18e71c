export { woodDensity } from './density.ts'
export { dressedSizes, dressedSizesSource } from './dressed-sizes.ts'
export { boardFeetThousandths, poundsPerFoot, sectionOf } from './section.ts'
export { densitySource } from './weights.ts'
