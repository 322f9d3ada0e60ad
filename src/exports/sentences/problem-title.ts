import type { ProblemCode, WarningCode } from "../../domain/problem.js";
import type { Words } from "../words/words.js";

type ReadersCode = keyof Words["mistakeTitle"];

/** What only writers and programs can get wrong, in English. */
const english: Readonly<Record<Exclude<ProblemCode, ReadersCode>, string>> = {
  ALLERGEN_WEAKENED: "Less is said of an allergen",
  ALREADY_WITHDRAWN: "Already withdrawn",
  BAD_ARCHIVE: "Archive not readable",
  BAD_TIME: "Time cannot be used",
  CELL_IS_A_DATE: "Amount became a date",
  CHANGED_SINCE_SCHEDULED: "Changed since it was scheduled",
  CLAIM_BROKEN: "Claim contradicted",
  CLAIM_NOT_KNOWN: "Claim not borne out",
  CLAIM_WITHOUT_RULE: "Claim without a rule",
  COMPONENT_CYCLE: "Components need one another",
  COMPONENT_NOT_REACHED: "Component not used",
  COMPONENT_SET_ASIDE: "Component put aside",
  DELIMITER_UNCLEAR: "Delimiter unclear",
  FILE_NOT_HAD: "File not fetched",
  FOOD_IS_SHARED: "Slug of a shared food",
  FORM_UNKNOWN: "Unknown form",
  IMAGE_REFUSED: "Picture not taken",
  IMPORT_ENDED: "Import has ended",
  IMPORT_FAULT: "Internal error of an import",
  IMPORT_GOING_ON: "Import is running",
  KEPT_BEYOND_RULES: "Kept longer than any rule allows",
  KEY_IN_USE: "Write is still running",
  KEY_REUSED: "Key used with other input",
  LIMIT_PASSED: "Limit of the feed passed",
  LINE_OPEN: "Line not clear",
  MORE_PUT_ASIDE: "More rows put aside",
  NEEDS_THE_COLD: "Needs the cold",
  NOTHING_CHANGED: "Nothing changed",
  NOT_TEXT: "Not text",
  NOT_WAITING: "Waits no more",
  PREVIEW_ENDED: "Preview has ended",
  PRICE_OUT_OF_LINE: "Price out of line",
  PUBLISHER_NOT_EMPTY: "Publisher is not empty",
  PUBLISH_AT_LATER: "To be published later",
  RECIPE_OPEN: "Recipe not complete",
  ROW_SETTLED: "Row is resolved",
  RULE_SET_EXISTS: "Rule set exists",
  SLUG_TAKEN: "Slug is taken",
  STALE_DRAFT: "Draft was changed since",
  TRANSLATES_NOTHING: "Translates nothing",
  TRANSLATION_NUMBERS: "Numbers differ in a translation",
  UNKNOWN_DELIVERY: "Unknown delivery",
  UNKNOWN_DRAFT: "Unknown draft",
  UNKNOWN_FEED: "Unknown feed",
  UNKNOWN_FILE: "Unknown file",
  UNKNOWN_IMAGE: "Unknown picture",
  UNKNOWN_PART: "Unknown part of a food",
  UNKNOWN_PREVIEW_LINK: "Unknown preview link",
  UNKNOWN_PUBLISHER: "Unknown publisher",
  UNKNOWN_ROW: "Unknown row",
  UNKNOWN_RUN: "Unknown import",
  UNKNOWN_SCHEDULED: "Nothing scheduled by that id",
  UNKNOWN_TOKEN: "Unknown token",
  UNKNOWN_WEBHOOK: "Unknown webhook",
};

const isReaders = (code: ProblemCode, words: Words): code is ReadersCode => Object.hasOwn(words.mistakeTitle, code);

/** The kind of a problem in a few words: in the reader's language where a reader can cause it, else in English. */
export const problemTitle = (code: ProblemCode, words: Words): string =>
  isReaders(code, words) ? words.mistakeTitle[code] : english[code];

export const warningTitle = (code: WarningCode, words: Words): string => words.warningTitle[code];
