/** Species as the NDS Supplement names them: SP Southern Pine, DFL Douglas fir-larch, HF hem-fir, SPF spruce-pine-fir, RW redwood, WC western cedars. */
export const lumberSpecies = ['SP', 'DFL', 'HF', 'SPF', 'RW', 'WC'] as const

export const lumberGrades = ['No.2'] as const

export const lumberTreatments = ['treated', 'untreated'] as const
