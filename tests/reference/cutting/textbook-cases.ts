/** A published cutting problem: one or more stock lengths with costs, demands by length, and the proven optimum. */
export interface TextbookCase {
  readonly name: string
  readonly unit: string
  readonly stocks: readonly { readonly length: number; readonly cost: number }[]
  readonly items: readonly (readonly [length: number, demand: number])[]
  readonly optimum: number
  /** where data and figures stand, and which of them were read there */
  readonly source: string
  readonly read: string
}

export const TEXTBOOK_CASES: readonly TextbookCase[] = [
  {
    name: 'encyclopaedia-5600mm-13-widths',
    unit: 'mm',
    stocks: [{ length: 5600, cost: 1 }],
    items: [
      [1380, 22],
      [1520, 25],
      [1560, 12],
      [1710, 14],
      [1820, 18],
      [1880, 18],
      [1930, 20],
      [2000, 10],
      [2050, 12],
      [2100, 14],
      [2140, 16],
      [2150, 18],
      [2200, 20],
    ],
    optimum: 73,
    source: 'Wikipedia, "Cutting stock problem"',
    read: 'page read',
  },
  {
    name: 'chvatal-ch13-100in-4-widths',
    unit: 'in',
    stocks: [{ length: 100, cost: 1 }],
    items: [
      [45, 97],
      [36, 610],
      [31, 395],
      [14, 211],
    ],
    optimum: 453,
    source:
      'V. Chvatal, Linear Programming (1983), ch. 13, p. 195, as reproduced by neos-guide.org/case-studies/sc/mfg/the-cutting-stock-problem/ (one vendor manual, ormpug Example 4.5, prints 35 in for 36 in)',
    read: 'page read; it gives data and the count of 37 patterns; optimum found by an independent integer program over all maximal patterns, in two engines',
  },
  {
    name: 'paper-mill-110in-5-widths',
    unit: 'in',
    stocks: [{ length: 110, cost: 1 }],
    items: [
      [75, 8],
      [55, 10],
      [50, 24],
      [45, 35],
      [20, 48],
    ],
    optimum: 47,
    source:
      'Fourer, Gay & Kernighan, AMPL (cut.dat); data as set in IE 316 problem set 6 (coursehero.com/file/221288/ps6)',
    read: 'page read; it gives data; optimum found by an independent integer program over all maximal patterns, in two engines (46.25 / 47 is also the figure in the AMPL book, from memory)',
  },
  {
    name: 'building-supply-25ft-a',
    unit: 'ft',
    stocks: [{ length: 25, cost: 1 }],
    items: [
      [10, 300],
      [9, 1200],
      [7, 700],
    ],
    optimum: 775,
    source:
      'textbook exercise in the manner of Taylor, Introduction to Management Science (brainmass.com 78145; solutioninn.com "building supply company"): 700 x 7 ft, 1200 x 9 ft, 300 x 10 ft from 25 ft boards',
    read: 'page read; it gives data; optimum found by an independent integer program over all maximal patterns, in two engines',
  },
  {
    name: 'lumber-yard-25ft-b',
    unit: 'ft',
    stocks: [{ length: 25, cost: 1 }],
    items: [
      [11, 300],
      [9, 1200],
      [7, 5000],
    ],
    optimum: 2167,
    source:
      'textbook exercise in the manner of Ragsdale, Spreadsheet Modeling (transtutors.com 6449103): 5000 x 7 ft, 1200 x 9 ft, 300 x 11 ft from 25 ft boards',
    read: 'page read; it gives data; optimum found by an independent integer program over all maximal patterns, in two engines',
  },
  {
    name: 'lumber-20ft-4-lengths',
    unit: 'ft',
    stocks: [{ length: 20, cost: 1 }],
    items: [
      [10, 70],
      [8, 15],
      [4, 25],
      [3, 50],
    ],
    optimum: 54,
    source:
      'textbook exercise ("boards of various lengths"): 50 x 3 ft, 25 x 4 ft, 15 x 8 ft, 70 x 10 ft from 20 ft boards',
    read: 'page read; it gives data; optimum found by an independent integer program over all maximal patterns, in two engines',
  },
  {
    name: 'minizinc-cutstock-L10',
    unit: '',
    stocks: [{ length: 10, cost: 1 }],
    items: [
      [7, 2],
      [5, 2],
      [3, 4],
    ],
    optimum: 4,
    source: 'MiniZinc example cutstock.mzn (J. Puchinger 2007): L=10, lengths 7,5,3, demands 2,2,4',
    read: 'page read; it gives data; optimum found by an independent integer program over all maximal patterns, in two engines',
  },
  {
    name: 'lumber-17ft-3-lengths',
    unit: 'ft',
    stocks: [{ length: 17, cost: 1 }],
    items: [
      [9, 15],
      [5, 20],
      [3, 25],
    ],
    optimum: 19,
    source:
      'Winston, Operations Research, cutting-stock section (3/5/9 ft from 17 ft boards, demands 25/20/15)',
    read: 'data from memory; optimum found by an independent integer program over all maximal patterns, in two engines',
  },
  {
    name: 'chvatal-91in-half-inch-widths',
    unit: 'half-inch',
    stocks: [{ length: 182, cost: 1 }],
    items: [
      [51, 78],
      [45, 40],
      [40, 30],
      [30, 30],
    ],
    optimum: 44,
    source:
      'V. Chvatal, Linear Programming (1983), p. 198 (rolls 91 in; 25.5, 22.5, 20, 15 in; 78, 40, 30, 30), lengths doubled',
    read: 'data from memory ; optimum found by an independent integer program over all maximal patterns, in two engines',
  },
  {
    name: 'three-stock-lengths-9-6-5',
    unit: '',
    stocks: [
      { length: 9, cost: 10 },
      { length: 6, cost: 7 },
      { length: 5, cost: 6 },
    ],
    items: [
      [4, 20],
      [3, 10],
      [2, 20],
    ],
    optimum: 170,
    source:
      'multiple stock lengths with their own prices, in the form used by Gilmore & Gomory 1961 and Dyckhoff 1981 (S={9,6,5}, D={4,3,2})',
    read: 'data from memory; optimum found by an independent integer program over all maximal patterns, in two engines',
  },
  {
    name: 'no-integer-round-up-132',
    unit: '',
    stocks: [{ length: 132, cost: 1 }],
    items: [
      [44, 2],
      [33, 3],
      [12, 6],
    ],
    optimum: 3,
    source:
      'a small instance whose linear bound, 259/132, does not round up to its optimum; of the kind in M. Fieldhouse, "The duality gap in trim problems" (1990)',
    read: 'data from memory; optimum by hand: of two boards one would have to hold 44s and 33s of 132 together and the other of 55, which no 44s and 33s make, since all other shares leave more than the 5 there are',
  },
]
