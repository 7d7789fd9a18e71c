export { boltHoleSource, guardBolts, guardBoltsSource } from './guard-bolts.ts'
export { ledgerHoles, ledgerHolesSource } from './ledger-holes.ts'
export { hangerNails, hangerNailsSource, nailing, nailingSources } from './nailing.ts'
export { GALVANISED_FEWER, type NailName, nailsPerPound, nailsPerPoundSource } from './nails.ts'
