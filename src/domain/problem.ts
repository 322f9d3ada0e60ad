import type { ArchiveFault } from "./archive-fault.js";
import type { CodeListName } from "./code-list-name.js";
import type { Path } from "./path.js";

export type { Path } from "./path.js";

/** Which kind of document a draft is. */
export type DraftKind = "COMPONENT" | "FOOD" | "PACKS" | "PLAN" | "TRANSLATION";

/** Where in the writer's own text; line and column count from 1. */
export interface TextPlace {
  /** The name that the text was handed in under. */
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/**
 * What is wrong, as facts. Sentences are made at the edge (exports/sentences/problem-text.ts), in one place. In a draft's document the
 * path leads through the document as written, and `place` says where that stands.
 */
/** What may be meant by a name that is no food's. */
export interface FoodOffer {
  /** Slugs, the nearest first. */
  readonly nearest: readonly string[];
  /** Rows of the open food table with these words. */
  readonly rows: readonly { readonly ndbNo: string; readonly description: string }[];
  /** Of a new food of this name; null: the name has no letter for one. */
  readonly slug: string | null;
  /** BCP 47 language that the name stands in. */
  readonly language: string;
  /** Made to a reader, who saves no foods: `nearest` are names in the reader's language. */
  readonly reader?: true;
}

export type Problem = ProblemFacts & {
  readonly place?: TextPlace;
  /** Where in what was asked, by the names of the API, where `path` goes by those of an address: `["household", "diets", 1]`. */
  readonly asked?: Path;
};

export type ProblemCode = Problem["code"];

/** What is said of an allergen in a food, as in `AllergenPresence` of the model, which stands above this list. */
type Statement = "CONTAINS" | "MAY_CONTAIN" | "DOES_NOT_CONTAIN" | "UNKNOWN";

/** Why a picture is not taken. */
export type ImageFault =
  | "EMPTY"
  | "NOT_AN_IMAGE"
  | "OTHER_FORMAT"
  | "DAMAGED"
  | "ANIMATED"
  | "TOO_MANY_BYTES"
  | "TOO_MANY_PIXELS"
  | "TOO_SMALL"
  | "TOO_NARROW"
  | "TOO_MANY"
  | "REMOVED";

type ProblemFacts =
  | { readonly code: "UNKNOWN_UNIT"; readonly path: Path; readonly unit: string; readonly nearest: readonly string[] }
  | {
      readonly code: "AMBIGUOUS_UNIT";
      readonly path: Path;
      readonly unit: string;
      readonly candidates: readonly string[];
    }
  /** A word that its closed list does not have. */
  | {
      readonly code: "UNKNOWN_CODE";
      readonly path: Path;
      readonly list: CodeListName;
      readonly written: string;
      readonly nearest: readonly string[];
    }
  | { readonly code: "UNKNOWN_FOOD"; readonly path: Path; readonly food: string; readonly offer?: FoodOffer }
  /** One name of several foods; `candidates` are names of them in the reader's language. */
  | {
      readonly code: "AMBIGUOUS_FOOD";
      readonly path: Path;
      readonly food: string;
      readonly candidates: readonly string[];
    }
  | { readonly code: "UNKNOWN_COMPONENT"; readonly path: Path; readonly component: string }
  | {
      readonly code: "UNKNOWN_PART";
      readonly path: Path;
      readonly food: string;
      readonly part: string;
      readonly known: readonly string[];
    }
  | {
      readonly code: "UNKNOWN_ROUTE";
      readonly path: Path;
      readonly component: string;
      readonly route: string;
      readonly known: readonly string[];
    }
  | {
      readonly code: "UNKNOWN_PLAN";
      readonly path: Path;
      readonly publisher: string;
      readonly plan: string;
      readonly revision: number | null;
    }
  /** The plan as a whole. `title`: its last; `locale`: BCP 47, of its words; `at`: ISO date; `because`: in its publisher's words, null where it gave none. */
  | {
      readonly code: "WITHDRAWN";
      readonly path: Path;
      readonly publisher: string;
      readonly plan: string;
      readonly title: string;
      readonly locale: string;
      readonly at: string;
      readonly because: string | null;
    }
  | { readonly code: "UNKNOWN_PUBLISHER"; readonly path: Path; readonly publisher: string }
  /** `token`: its id. */
  | { readonly code: "UNKNOWN_TOKEN"; readonly path: Path; readonly token: string }
  | { readonly code: "UNKNOWN_WEBHOOK"; readonly path: Path; readonly webhook: string }
  /** An hour at which nothing can be done; `offers` is what may have been meant. */
  | {
      readonly code: "BAD_TIME";
      readonly path: Path;
      readonly written: string;
      readonly zone: string;
      readonly why: "UNKNOWN_ZONE" | "UNREADABLE" | "SKIPPED" | "REPEATED" | "OTHER_OFFSET" | "PAST" | "TOO_FAR";
      readonly offers: readonly string[];
    }
  /** The draft says when it is to be published, and that is to come. */
  | {
      readonly code: "PUBLISH_AT_LATER";
      readonly path: Path;
      readonly plan: string;
      readonly at: string;
      readonly zone: string;
    }
  /** `scheduled`: its id. */
  | { readonly code: "UNKNOWN_SCHEDULED"; readonly path: Path; readonly scheduled: string }
  | { readonly code: "NOT_WAITING"; readonly path: Path; readonly scheduled: string; readonly state: string }
  /** The plan was published or withdrawn since; `at`: ISO, when that was scheduled. */
  | { readonly code: "CHANGED_SINCE_SCHEDULED"; readonly path: Path; readonly plan: string; readonly at: string }
  /** `link`: its id. */
  | { readonly code: "UNKNOWN_PREVIEW_LINK"; readonly path: Path; readonly link: string }
  /** `at`: instant in ISO; null where nobody took a draft away at a known time. */
  | {
      readonly code: "PREVIEW_ENDED";
      readonly path: Path;
      readonly why: "EXPIRED" | "REVOKED" | "NO_DRAFT";
      readonly at: string | null;
    }
  | { readonly code: "UNKNOWN_DELIVERY"; readonly path: Path; readonly delivery: string }
  | { readonly code: "SLUG_TAKEN"; readonly path: Path; readonly slug: string }
  /** The idempotency key stands for a write with other input. */
  | { readonly code: "KEY_REUSED"; readonly path: Path }
  /** The write that the idempotency key stands for is not done yet. */
  | { readonly code: "KEY_IN_USE"; readonly path: Path }
  /** A draft was saved, made or discarded since its writer read it. Versions; null: there is, or should be, none. */
  | {
      readonly code: "STALE_DRAFT";
      readonly path: Path;
      readonly draft: DraftKind;
      readonly slug: string;
      readonly expected: number | null;
      readonly actual: number | null;
    }
  /** A translation of a text that the plan or component does not have. `of`: its name. */
  | {
      readonly code: "TRANSLATES_NOTHING";
      readonly path: Path;
      readonly of: string;
      readonly nearest: readonly string[];
    }
  | { readonly code: "UNKNOWN_DRAFT"; readonly path: Path; readonly draft: DraftKind; readonly slug: string }
  /** A publisher's own food has the slug of one that all publishers share, and does not say that it builds on it. */
  | { readonly code: "FOOD_IS_SHARED"; readonly path: Path; readonly food: string }
  /** A correction that corrects nothing: the revision in force says exactly this. */
  | { readonly code: "NOTHING_CHANGED"; readonly path: Path; readonly revision: number }
  | { readonly code: "ALREADY_WITHDRAWN"; readonly path: Path; readonly revision: number }
  | { readonly code: "COMPONENT_CYCLE"; readonly path: Path; readonly cycle: readonly string[] }
  | { readonly code: "COMPONENT_NOT_REACHED"; readonly path: Path; readonly component: string }
  | {
      readonly code: "NOT_CONVERTIBLE";
      readonly path: Path;
      readonly item: string;
      readonly from: string;
      readonly to: string;
      readonly missing: string;
    }
  | { readonly code: "BAD_AMOUNT"; readonly path: Path; readonly written: string; readonly why: string }
  | {
      readonly code: "AMOUNT_OUT_OF_RANGE";
      readonly path: Path;
      readonly value: string;
      readonly min: number;
      readonly max: number;
    }
  | {
      readonly code: "SERVINGS_OUT_OF_RANGE";
      readonly path: Path;
      readonly value: number;
      readonly min: number;
      readonly max: number;
    }
  | {
      readonly code: "TOO_LARGE";
      readonly path: Path;
      readonly what: string;
      readonly size: number;
      readonly limit: number;
    }
  /** Steps that wait for one another in a ring: task ids of the session. */
  | { readonly code: "STEPS_IN_A_CIRCLE"; readonly path: Path; readonly steps: readonly string[] }
  /** Greatest waits or evening times of which no order keeps all: task ids of the session. */
  | { readonly code: "WAITS_CANNOT_BE_KEPT"; readonly path: Path; readonly steps: readonly string[] }
  /** Steps need an appliance of which the kitchen has none: `slug/step`. */
  | {
      readonly code: "KITCHEN_WITHOUT";
      readonly path: Path;
      readonly appliance: string;
      readonly steps: readonly string[];
    }
  | StoppingProblem
  /** A set of that code is loaded, with other content. */
  | { readonly code: "RULE_SET_EXISTS"; readonly path: Path; readonly set: string }
  | { readonly code: "DUPLICATE"; readonly path: Path; readonly value: string }
  | { readonly code: "BAD_SHAPE"; readonly path: Path; readonly expected: string; readonly got: string }
  /** An amount that a spreadsheet program turned into a date; `offers` is what may have stood there. */
  | { readonly code: "CELL_IS_A_DATE"; readonly path: Path; readonly cell: string; readonly offers: readonly string[] }
  /** A row that says less of an allergen than is known of the food: only a person may take it away. */
  | {
      readonly code: "ALLERGEN_WEAKENED";
      readonly path: Path;
      readonly food: string;
      readonly allergen: string;
      readonly was: Statement;
      readonly now: Statement;
    }
  /** A price far from what the food's other packs cost for as much; `ratio`: this one through theirs. */
  | {
      readonly code: "PRICE_OUT_OF_LINE";
      readonly path: Path;
      readonly food: string;
      readonly price: string;
      readonly ratio: number;
      readonly packs: readonly string[];
    }
  /** More of an import changed, or was refused, than its feed allows: nothing was loaded. Shares from 0 to 1. */
  | {
      readonly code: "LIMIT_PASSED";
      readonly path: Path;
      readonly what: "changed" | "quarantined";
      readonly share: number;
      readonly limit: number;
    }
  /** A fault of ours; the log has it under the id of the run. */
  | { readonly code: "IMPORT_FAULT"; readonly path: Path; readonly run: string }
  /**
   * What a person must still say of a recipe before it can be a draft. `written`: the line or the yield; `foods`: those the
   * line may name, null where it names one.
   */
  | {
      readonly code: "RECIPE_OPEN";
      readonly path: Path;
      readonly open: "LINE" | "SERVINGS" | "TIME" | "STEPS";
      readonly written: string | null;
      readonly reasons: readonly { readonly code: string; readonly about: string }[];
      readonly foods: readonly string[] | null;
    }
  /** A line written as text that may mean several things, or nothing that is known. `named`: slugs that it may name; null: that is certain. */
  | {
      readonly code: "LINE_OPEN";
      readonly path: Path;
      readonly written: string;
      readonly reasons: readonly { readonly code: string; readonly about: string }[];
      readonly named: readonly string[] | null;
      readonly amounts: readonly string[];
    }
  /** A file that cannot be fetched from its feed's place; `tries`: how often that was tried. */
  | { readonly code: "FILE_NOT_HAD"; readonly path: Path; readonly why: string; readonly tries: number }
  /** A document that builds on a component whose own document, in the same file, was put aside. */
  | { readonly code: "COMPONENT_SET_ASIDE"; readonly path: Path; readonly component: string }
  /** An archive of a publisher, or a file in it. */
  | { readonly code: "BAD_ARCHIVE"; readonly path: Path; readonly fault: ArchiveFault }
  /** Archives are only imported where nothing is there yet. */
  | { readonly code: "PUBLISHER_NOT_EMPTY"; readonly path: Path; readonly publisher: string }
  | { readonly code: "UNKNOWN_FEED"; readonly path: Path; readonly feed: string }
  /** `run`, `file`: ids. */
  | { readonly code: "UNKNOWN_RUN"; readonly path: Path; readonly run: string }
  | { readonly code: "UNKNOWN_FILE"; readonly path: Path; readonly file: string }
  /** `found`: what was handed in instead. */
  | { readonly code: "IMAGE_REFUSED"; readonly path: Path; readonly fault: ImageFault; readonly found: string }
  /** Nothing was handed in under that name, or that hash. */
  | { readonly code: "UNKNOWN_IMAGE"; readonly path: Path; readonly image: string }
  | { readonly code: "UNKNOWN_ROW"; readonly path: Path; readonly line: number; readonly part: number }
  | { readonly code: "ROW_SETTLED"; readonly path: Path; readonly line: number }
  /** Of one feed only one run waits or goes on at a time. */
  | { readonly code: "IMPORT_GOING_ON"; readonly path: Path; readonly feed: string }
  | { readonly code: "IMPORT_ENDED"; readonly path: Path; readonly run: string }
  /** A table whose columns may be parted by more than one mark, or by none. */
  | { readonly code: "DELIMITER_UNCLEAR"; readonly path: Path; readonly firstLine: string }
  /** Bytes that are no text in the encoding of the file. */
  | { readonly code: "NOT_TEXT"; readonly path: Path; readonly encoding: string }
  | { readonly code: "BAD_HOUSEHOLD"; readonly path: Path; readonly what: string; readonly value: string }
  /** So many more were found than are listed; it stands last. */
  | { readonly code: "MORE_PROBLEMS"; readonly path: Path; readonly count: number }
  /** An import put so many more rows aside than it kept to be mended. */
  | { readonly code: "MORE_PUT_ASIDE"; readonly path: Path; readonly count: number; readonly kept: number };

/** A plan's claim that its foods contradict, or do not bear out, or that no diet rule knows. `foods` are slugs. */
export type ClaimProblem =
  | {
      readonly code: "CLAIM_BROKEN" | "CLAIM_NOT_KNOWN";
      readonly path: Path;
      readonly claim: string;
      readonly foods: readonly string[];
    }
  | { readonly code: "CLAIM_WITHOUT_RULE"; readonly path: Path; readonly claim: string };

/** A writer's days that no published rule of the class bears out, and food that needs the cold kept on a shelf. Days as the writer's rule and the most lenient published one give them. */
export type KeepingProblem =
  | {
      readonly code: "KEPT_BEYOND_RULES";
      readonly path: Path;
      readonly subject: string;
      readonly keepsAs: string;
      readonly at: "FRIDGE" | "FREEZER" | "ROOM";
      readonly days: number;
      readonly most: number;
      readonly rule: string;
    }
  | {
      readonly code: "NEEDS_THE_COLD";
      readonly path: Path;
      readonly subject: string;
      readonly keepsAs: string;
      readonly days: number;
    };

/** A form that a line names and its food has no fact of. */
export interface FormProblem {
  readonly code: "FORM_UNKNOWN";
  readonly path: Path;
  readonly food: string;
  readonly form: string;
  readonly known: readonly string[];
}

/** A translation with other numbers than its original: each side's, as they are written, that the other does not have. */
export interface TranslationProblem {
  readonly code: "TRANSLATION_NUMBERS";
  readonly path: Path;
  /** BCP 47 tag. */
  readonly language: string;
  /** The text, as `numbers-differ` names it. */
  readonly at: string;
  readonly original: readonly string[];
  readonly translated: readonly string[];
}

/** What the writer's check may find that stops publishing. */
export type StoppingProblem = ClaimProblem | KeepingProblem | FormProblem | TranslationProblem;

export type { Warning, WarningCode } from "./warning.js";

export type Result<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: readonly Problem[] };

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });
export const failed = (problems: readonly Problem[]): Result<never> => ({ ok: false, problems });

/** Takes results one by one: `note` gives the value, or null and keeps the problems, so that all are listed at the end. */
export function gatherProblems(): {
  readonly problems: Problem[];
  readonly note: <T>(result: Result<T>) => T | null;
} {
  const problems: Problem[] = [];
  return {
    problems,
    note: (result) => {
      if (result.ok) return result.value;
      problems.push(...result.problems);
      return null;
    },
  };
}
