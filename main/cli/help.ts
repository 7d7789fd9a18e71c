export const HELP = `Kerfwright: estimates and cut plans for residential deck framing

  kerfwright estimate JOB.json [--prices FILE] [--joints] [--json] [--xlsx FILE]
      Frame, checks, order, cutting plan and price of a job. --json writes everything to the standard output,
      lengths in 1/32 in, money in cents; --xlsx writes a workbook with live formulas; --joints says what each joint
      of the frame saves. Wishes on the cutting stand in the job, and the report says what each costs:
      { "cutting": { "onePiece": "Ledger; Beam B1", "doWithout": "2x10: 14, 18", "atMost": "5/4x6: 20 of 16",
                     "objective": "fewest joints", "objectiveThen": "fewest lengths" } }
      An objective is least cost, fewest joints, least waste or fewest lengths.

  kerfwright compare JOB.json --width 18ft..26ft [--step 6in] [--prices FILE] [--json]
      The same deck at every width from one to the other: cost, price, joints, waste, and why each differs.

  kerfwright cut LIST.csv [--stock FILE] [--kerf 1/8in] [--trim 1/2in] [--columns LIST] [--prices FILE] [--json]
                          [--csv FILE] [--xlsx FILE]
      Order and cutting sheet of any list of pieces, as CSV or pasted from a spreadsheet (tab, comma or semicolon).
      The first row heads the columns: quantity, length, mark, product; --columns quantity,length,nothing,mark says
      it instead, from the left. A column "runs wild" says what a piece is cut longer, to be cut in place. Stock is a second file, or rows under a row that says only Stock or Offcuts:
      length, price, supply, and where it is so pack (sold by), minimum (least count), break from and break price
      (what each costs from so many on). Without stock the price book's is used; without prices the least length is bought. Bare
      numbers are inches, or feet under "Length (ft)". --csv writes order and pieces for a spreadsheet; text that it
      would take for a formula, starting with = + - or @, gets an apostrophe before it. --xlsx writes a workbook with
      live formulas: plan, order, cutting sheet.

  kerfwright rest JOB.json --day DAY.json [--prices FILE] [--json]
      The rest of a job that is begun, planned again: boards sawn and culled, pieces cut wrong, a yard that is out.
      What is cut otherwise, what is bought, what can go back. Boards go by their numbers in the cutting plan:
      { "2x10": { "sawn": [1, 2], "culls": [{ "board": 3, "from": "0", "to": "4 ft" }],
                  "miscuts": [{ "board": 2, "piece": "J4", "length": "11 ft 3 in" }],
                  "yard": [{ "length": "16 ft", "left": 0 }], "refund": "80 %" } }

  kerfwright size JOB.json [--hold FIELD,...] [--write FILE] [--prices FILE] [--json]
      The cheapest joists, beams, posts and footings that pass every check, joints, concrete and hours counted; what
      governs each, and what the next smaller one fails on. --hold keeps fields as they are, such as
      frame.joists.size,frame.postSize; --write makes a new job file with the changes.

  kerfwright papers JOB.json --to FOLDER [--only SHEET,...] [--paper letter|tabloid|a4|a3] [--scale N] [--units feet|mm]
                             [--as pdf,svg,dxf,csv,txt] [--date YYYY-MM-DD] [--revision TEXT] [--firm FILE]
                             [--prices FILE]
      The sheets for permit office, yard, crew and customer: one PDF, DXF drawings, CSV tables and the order as text;
      --as says which of these, and svg for a file a page. --only: contents, the index of the sheets, framing, section,
      details, footings, marking, decking, stairs, cutting, order, checks, steps, inspections, cost, quote, change,
      record, and strips, the joist marks at true size, which are made only when named. --units mm prints lengths in
      millimetres. Without --scale each drawing is as large as fits at a usual scale; --scale 48 is 1/4 in to the foot,
      for plans, sections and elevations: details stay as large as fits.
      The date is printed as it is stated and never read from a clock; without --revision six figures tell one
      state of the job from another. --firm is a file { "name": "…", "lines": ["…"], "terms": ["…"],
      "logo": "data:image/png;base64,…", "state": "CA", "validDays": 30, "stages": [{ "label": "Deposit", "share": 1000 }, …] }, shares in 1/100 %.

  kerfwright ground JOB.json [--found "3: 2 in right, 1 1/2 in out" [--choose WAY --write FILE]] [--prices FILE] [--json]
      Footings, holes, strings, concrete by bags or the truck, form tubes from the pieces they are sold in, digging by
      soil, and posts as they were measured. --found says where a hole was found: right, left, out (away from the house)
      or back, and rock or pipe where its place is barred; each way to go on is checked, cut and priced. --choose keep,
      "move along the beam", "drill the anchor anew", "shift the base" or "dig again" with --write makes a new job file.

  kerfwright prices LIST.csv [--date YYYY-MM-DD] [--supplier TEXT] [--beside] [--columns LIST] [--known]
                             [--prices FILE] [--write FILE] [--json]
      A yard's list of prices put into a price book: what each row changes, or everything that is wrong with the list
      and nothing. The first row heads the columns: code, item, length, price, unit, date, supplier; --columns says it
      instead, from the left. Rows are found by the yard's code or by name. --known leaves out what the price book does
      not know; --write makes a new price book file. Each price keeps the day and the supplier that it is of. --beside
      puts the prices of another supplier beside those that are there, so that each job is bought where the whole is
      cheapest. What a delivery costs is stated in the book:
      "suppliers": [{ "name": "Hill Top Lumber", "delivery": "$60", "freeFrom": "$1500" }], and a length or a good of
      another supplier as "offers": [{ "supplier": "Hill Top Lumber", "price": "$22.10", "code": "HD-16" }], with
      supply, pack, minimum and breaks [{ "from": 20, "price": "$21" }] where it is so. Then estimate says who brings
      what and what one supplier alone would cost, and papers makes an order for each.

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
For size: 0 the sizes pass; 1 none passes, or something that no size mends is left; 2 as above.
For cut: 0 every product is planned; 1 one cannot be, with the reason; 2 as above.

Local code and the building official govern. Have utilities marked before digging.
`
