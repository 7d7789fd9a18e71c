export { beamExtent, beamExtentField } from './beam-extent.ts'
export { clearField, setField, statedValue } from './commands.ts'
export { cornerList, type Place } from './corner-list.ts'
export type { EntryKind, EntryKinds, HoursWorked, KeptLine, LineState, Purchase } from './costing-entries.ts'
export { isRectangle } from './cross-faults.ts'
export { type DeckPart, deckPartList } from './deck-part-list.ts'
export { greatestSetback } from './default-setbacks.ts'
export { DEMO_JOB } from './demo-job.ts'
export { describeChange } from './describe-change.ts'
export { edgeList } from './edge-list.ts'
export type { FieldValue, Spot } from './field-value.ts'
export { FIELDS, FIELDS_WITHOUT_PRICE, fieldAt, findField } from './fields.ts'
export {
  FOUND_WAYS,
  type Found,
  type FoundWay,
  placeWords,
  printSettled,
  readFound,
  type Settled,
  settledList,
} from './found-list.ts'
export { fileNameFor, JOB_FILE_ENDING, jobName } from './job-file-name.ts'
export { LONGEST_JOB_TEXT, readJobText, writeJobText } from './job-text.ts'
export { excerpt, isObject, type JsonObject, kindOf } from './json-shape.ts'
export { type EdgeLength, edgeLengthList, lengthList, middleBeamList } from './length-list.ts'
export { levelList, type StatedLevel } from './level-list.ts'
export {
  printStatedLines,
  readStatedLines,
  type StatedLine,
  statedLines,
  withStatedLine,
} from './line-list.ts'
export { nearestName } from './nearest-name.ts'
export { newJobText } from './new-job-text.ts'
export { type JobOption, optionList, printOptions, withOption } from './option-list.ts'
export { type PlacedJson, readPlacedJson } from './placed-json.ts'
export { type PostLength, postList, printPostList } from './post-list.ts'
export { printBounds, printFieldValue } from './print-field.ts'
export { readEntries, statedEntries } from './read-entries.ts'
export { defaultOf, readJob } from './read-job.ts'
export { readValue } from './read-value.ts'
export {
  type JoistDirection,
  type Rectangle,
  rectangleList,
  type StatedZone,
  zoneList,
} from './rectangle-list.ts'
export { namedRuns, noSuchRun, withoutRun, withRun } from './run-names.ts'
export { SIZED_FIELDS } from './sized-fields.ts'
export {
  furtherStairs,
  jobOfStairs,
  STAIR_BRANCHES,
  type StairBranch,
  type StatedStairs,
  specAt,
  stairsOf,
  titleOfStairs,
} from './stair-branches.ts'
export {
  printStockCounts,
  printStockLengths,
  type StockCount,
  type StockLength,
  stockCounts,
  stockLengths,
} from './stock-lists.ts'
export { toldBy } from './told-by.ts'
export type * from './types.ts'
export { JOB_VERSION, UPGRADES, type Upgrade, upgradeStatement } from './upgrade.ts'
export { valueAt } from './value-at.ts'
export { type Wish, wishesOf, withoutWish } from './wishes.ts'
