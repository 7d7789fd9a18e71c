export const HELP = `Kerfwright: estimates and cut plans for residential deck framing

  kerfwright estimate JOB.json [--prices FILE] [--json] [--xlsx FILE]
      Frame, checks, order, cutting plan and price of a job. --json writes everything to the standard output,
      lengths in 1/32 in, money in cents; --xlsx writes a workbook with live formulas.

  kerfwright compare JOB.json --width 18ft..26ft [--step 6in] [--prices FILE] [--json]
      The same deck at every width from one to the other: cost, price, joints, waste, and why each differs.

  kerfwright check JOB.json [--json]
      The structural checks alone.

  kerfwright new FILE
      A starting job with every field explained. A file that is there is not replaced.

  kerfwright --help, kerfwright --version

Job files are JSON; comments are allowed. Lengths are written as people say them: 23 ft 6 in, 13-6, 42".
Prices come from --prices, else from the file that the job names (pricing.book, seen from the job file's folder), else
from the sample price book, whose prices are invented. The result says which, with its date.

The exit code says: 0 every check passes; 1 something fails, is calculated only or lies outside the tables, and the
result is written all the same; 2 the input is not usable, and nothing is written.

Local code and the building official govern. Have utilities marked before digging.
`
