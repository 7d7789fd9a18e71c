import type { Place } from '../../state/session-types.ts'

/** One page of the help; it is part of the program and needs no network. */
export interface Topic {
  readonly id: string
  readonly title: string
  readonly paragraphs: readonly string[]
  /** the work place it speaks of */
  readonly place?: Place
}

/** The topic that tells of the program itself. */
export const ABOUT = 'about'

export const TOPICS: readonly Topic[] = [
  {
    id: 'first job',
    title: 'A first deck in ten minutes',
    paragraphs: [
      'Choose New job. Five questions ask for the size, what holds the deck, who builds it, what the place is like and whose prices count. What you leave open stays at its default, shown dashed, and can be changed at any time.',
      'Then go through the work places from left to right: Site, Frame, Ground, Boards, Price, Papers. The drawing stays; the fields at the right change. Every figure follows while you type.',
      'Look at the checks in Frame. What fails stands first, with its clause. Find a fix tries what would mend it; Size it finds the cheapest sizes that pass.',
      'At the end save the papers as a PDF, or the workbook.',
    ],
  },
  {
    id: 'site',
    title: 'Site: the size and the place',
    place: 'site',
    paragraphs: [
      'Width runs along the house, depth away from it, height from the ground to the top of the decking. Lengths of the deck are those of its frame; the decking may overhang.',
      'A bare number up to 60 in Width or Depth is feet, and the field says so; everywhere else a bare number is inches.',
      'Frost depth, soil and snow are local facts. Ask the building department and write down who told you: the papers print it. What is not told counts as the worse case.',
      'Compare other sizes shows a table of widths and depths with what each costs. A click takes a size; one undo takes it back.',
    ],
  },
  {
    id: 'frame',
    title: 'Frame: joists, beams, posts, stairs, guard',
    place: 'frame',
    paragraphs: [
      'Choose sizes and spacing, or let Size it find the cheapest that pass. Fields can be kept as they are while the rest is sized. Where no table covers a frame in any size, the sizes hold by calculation there, and which checks rest on that is said: ask the building official before you order.',
      'Edges, beams and posts can be drawn in the plan, moved by arrow keys, or typed: choose one and its place stands at the right.',
      'Stairs, guard and decking are folded away at the end of the fields.',
    ],
  },
  {
    id: 'ground',
    title: 'Ground: footings and where the holes are',
    place: 'ground',
    paragraphs: [
      'The table gives each hole from the corner of the house, its depth and what goes into it. Two diagonals that agree prove that the layout is square.',
      'Where a hole cannot be dug in its place, choose it and say where it was found: the ways to go on stand there with their checks and their cost.',
    ],
  },
  {
    id: 'boards',
    title: 'Boards: the order and the cutting plan',
    place: 'boards',
    paragraphs: [
      'The order is the cheapest set of boards from the lengths that your yard sells. Proven means that no order costs less; otherwise the gap in dollars is said.',
      'Hold a run in one piece, or do without a length: each such wish shows its price before and after. Joints tells for each place why the run is jointed there or not.',
      'At the saw you mark boards as cut. A board that is culled, or a length that the yard is out of, is told there, and the rest is planned again.',
      'Offcuts on the rack are used first where that is cheaper.',
    ],
  },
  {
    id: 'price',
    title: 'Price: from lines to what you charge',
    place: 'price',
    paragraphs: [
      'Materials, tax, labour and other costs make the direct cost; contingency and overhead are added; margin or markup makes the price. An owner who builds sees cost and hours only.',
      'Any quantity or price can be overridden in its line. It is marked, the computed value stays beside it, and it can be put back.',
      'Under the lines stands what changed since the quote that was sent last.',
      'Job costing holds a job under way against the estimate that it was begun on. Write down what you buy and the hours you work: each line shows what it took, what is still open, and what is left of the price. Mark a line as done where nothing more is to come.',
      'A finished job proposes rates: by task, hours estimated and worked, freed of what its conditions made longer. Each is taken into the price book only when you say so, and can be taken back.',
    ],
  },
  {
    id: 'papers',
    title: 'Papers: what leaves the program',
    place: 'papers',
    paragraphs: [
      'Choose sheets, paper, units and scale. The preview shows the pages as they will be printed. Print at 100 %, not fitted to the page, or the scales are not true.',
      'A quote that is numbered is kept as it was sent, whatever prices do later. Nothing is sent from here.',
      'The workbook has live formulas: a price that you change in it changes its total.',
    ],
  },
  {
    id: 'cut list',
    title: 'Cut list: any list of pieces',
    place: 'cut list',
    paragraphs: [
      'Paste or type pieces from a spreadsheet: length, how many, which lumber. The stock is your price book or a list of your own.',
      'It is planned in the same way as a deck, and saved as a workbook or CSV.',
    ],
  },
  {
    id: 'price book',
    title: 'Price book: prices, suppliers and rates',
    place: 'price book',
    paragraphs: [
      'Choose a cell and type over it; Enter takes the text, Escape leaves it, F2 edits what is there. What cannot be taken stays as it was typed, with what is wrong beside it. A price that you type is of today.',
      'Copy takes the rows that are shown as a spreadsheet takes them; a block from a spreadsheet is pasted at the cell where you stand, all of it or nothing.',
      'A thing may have prices of several suppliers. Each job is then bought where the whole is cheapest: which lengths are cut follows from who sells them, and each delivery is counted once. What all of it costs from one supplier stands beside it.',
      'Undo and redo in this place are those of the price book; in the other places they are those of the job.',
    ],
  },
  {
    id: 'lengths',
    title: 'How lengths are written',
    paragraphs: [
      `Feet and inches as a carpenter writes them: 12' 6-1/2", 12-6, 12 ft 6 in, 150.5 in, 12.5 ft, 3810 mm. What was read is written back in one form.`,
      'A text that cannot be read stays as it is, with what is wrong and what would be right beside it; the value before stays in use. Escape brings it back.',
      'Arrow up and arrow down in a field make one step of the trade, with Shift four.',
    ],
  },
  {
    id: 'defaults',
    title: 'Defaults',
    paragraphs: [
      'A dashed field holds a default. Once you state it, it is solid, and the arrow beside it brings the default back.',
      'Defaults are on the safe side where a value is not known. The papers say which facts of the place were not confirmed.',
      'New jobs can start from another job: its lumber, decking, guard, saw, crew and pricing. The place is asked anew, for frost, soil and snow are local. Choose the job in the settings or with the questions of a new one.',
    ],
  },
  {
    id: 'undo',
    title: 'Undo, saving, earlier states',
    paragraphs: [
      'Every change is saved within a second; there is nothing to save by hand. Save now marks a state that you can find again.',
      'Undo goes back step by step without end, also after a restart. Each step has its name. A drag is one step.',
      'All jobs lists the earlier states of the open job. To go back to one is a step too, so it can be undone.',
      'A copy of everything is kept for each of the last ten days beside the store.',
    ],
  },
  {
    id: 'checks',
    title: 'What the checks say',
    paragraphs: [
      '● passes. ◐ passes, with less than a tenth to spare. ▲ fails.',
      'Calculated only means that no table covers the member and the calculation stands alone: the building official has to accept it. Outside scope means that a licensed design professional is needed.',
      'Open a check for its clause, the figures and each step. Why? leads to the fields that it hangs on. Find a fix tries single changes, and each that helps can be taken as one step.',
    ],
  },
  {
    id: 'width',
    title: 'Width, and the tape under the drawing',
    paragraphs: [
      'Drag the flag on the tape or type into it. Over it runs what a square foot costs at each width; the steps in it are joints that begin and boards that get longer.',
      'A dot marks a width at which the framing comes whole from stock, a ring one at which the decking does too. The best neighbours are named with what they cost or save.',
    ],
  },
  {
    id: 'drawing',
    title: 'The drawing',
    paragraphs: [
      'Plan, section, front, side and solid are five ways to look at the same deck. The wheel, two fingers, or + and − make it larger and smaller; 0 shows the whole.',
      'Point at a member for its size; click it to choose it. The list of members in the fields is the same by keyboard and for screen readers.',
      'Layers can be hidden. Print gives the drawing in black and white.',
    ],
  },
  {
    id: 'prices',
    title: 'Whose prices',
    paragraphs: [
      'The sample prices are invented. Enter your own before you quote: take a list of your yard (CSV), or save the prices as a file, change it, and take it back.',
      'A list with faults changes nothing; each fault is told with its row and column. What was taken can be taken back.',
      'Prices that were not asked for in a long time are said to be old.',
    ],
  },
  {
    id: 'why',
    title: 'Why is this number so?',
    paragraphs: [
      'Every figure at the bottom can be clicked, and every line, member and check has a Why. It leads down to the fields that you typed and to the clause.',
    ],
  },
  {
    id: 'safety',
    title: 'Before anyone digs or builds',
    paragraphs: [
      'The local code and the building official govern. Have utilities marked before you dig. What lies outside the tables needs a licensed design professional.',
      'The program checks the frame of a residential deck against the tables and by calculation. It does not see the house: have the wall that holds a ledger looked at.',
    ],
  },
  {
    id: 'kept',
    title: 'Where your jobs are kept',
    paragraphs: [
      'All jobs are in one store on this machine. The program needs no network, has no account, and tells nobody anything. It does not look for newer versions; a newer one that you install takes over the store, and taking the program off leaves the store where it is.',
      'Save everything as one file, in All jobs, carries jobs, quotes, rack and prices to another machine. Taking such a file in never overwrites anything.',
      'A store of a newer program is refused and left untouched.',
    ],
  },
  { id: ABOUT, title: 'About Kerfwright', paragraphs: [] },
]
