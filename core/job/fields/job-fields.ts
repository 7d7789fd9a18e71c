import type { FieldSpec } from '../types.ts'

export const JOB_FIELDS: readonly FieldSpec[] = [
  {
    path: 'name',
    label: 'Name',
    section: 'job',
    kind: 'text',
    min: 1,
    max: 200,
    default: 'Untitled deck',
    help: 'What you call this job. It stands on every sheet.',
    basis: 'a placeholder',
  },
  {
    path: 'notes',
    label: 'Notes',
    section: 'job',
    kind: 'text',
    max: 10_000,
    default: '',
    help: 'Anything worth remembering about the place or the people. It changes no number.',
    basis: 'empty until you write it',
  },
  {
    path: 'builder',
    label: 'Who builds',
    section: 'job',
    kind: 'choice',
    choices: ['contractor', 'owner'],
    choiceLabels: ['a contractor', 'the owner'],
    default: 'contractor',
    help: 'A contractor’s price holds wages, overhead and margin. An owner who builds pays for materials, tools and permits, and sees the hours.',
    basis: 'the usual case; no source',
  },
]
