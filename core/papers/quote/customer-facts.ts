import type { Job } from '../../job/index.ts'

/** Where nothing is stated, somebody writes it in. */
export const TO_FILL = '____________________________________________'

type Row = readonly [string, string]

/** Whom it is built for, where, and how to reach them; what is not stated is a line to fill. */
export function customerFacts({ customer }: Pick<Job, 'customer'>): readonly Row[] {
  return [...siteFacts({ customer }), ['Telephone or e-mail', filled(customer.contact)]]
}

/** The same for a permit office: it reaches the applicant, not the customer. */
export function siteFacts({ customer }: Pick<Job, 'customer'>): readonly Row[] {
  return [
    ['Customer', filled(customer.name)],
    ['Address of the site', filled(customer.address)],
  ]
}

function filled(text: string): string {
  return text.trim() === '' ? TO_FILL : text.trim()
}
