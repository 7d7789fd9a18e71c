import { z } from 'zod'
import { MAX_TICKS, ticks } from '../../core/units/index.ts'

/** A length in ticks that something can have. */
export const lengthInput = z.int().min(1).max(MAX_TICKS).transform(ticks)
