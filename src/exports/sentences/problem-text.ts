import { archiveFaultSentence } from "./archive-fault-sentence.js";
import type { DraftKind, Path, Problem } from "../../domain/problem.js";
import { openTableNumber } from "../../domain/model/open-table-slug.js";
import { pathText } from "../words/path-text.js";
import { claimSentence } from "./claim-sentence.js";
import { timeSentence } from "./time-sentence.js";
import { unknownCodeSentence } from "./unknown-code-sentence.js";
import { unknownFoodSentence } from "./unknown-food-sentence.js";
import { translatesNothing, translationSentence } from "./translation-sentence.js";
import { stopsPublishingSentence } from "./stops-publishing-sentence.js";
import { imageSentence } from "./image-sentence.js";
import { openLineText, openPointText } from "./open-point-text.js";
import { missingWords, whatWords, whyWords } from "../words/missing-fact-words.js";
import { codeName } from "../words/rule-words.js";
import { wordsFor } from "../words/words-for.js";

/** What writers and programs are told in the words that readers of English are told. */
const english = wordsFor("en");

/** `components > dal > lines > l2`, with a colon after it; nothing for an empty path. */
const at = (path: Path): string => (path.length === 0 ? "" : `${pathText(path)}: `);

const list = (values: readonly string[]): string => values.join(", ");

/** What messages select by: they say something else where there is none. */
const orNone = (values: readonly string[]): string => (values.length === 0 ? "none" : list(values));

const offer = (label: string, values: readonly string[]): string =>
  values.length === 0 ? "" : ` ${label} ${list(values)}.`;

const statement = {
  CONTAINS: "contains",
  MAY_CONTAIN: "may contain",
  DOES_NOT_CONTAIN: "does not contain",
  UNKNOWN: "not known",
} as const;

const timesWords = (ratio: number): string =>
  ratio >= 1 ? `${ratio.toFixed(1)} times` : `only ${(ratio * 100).toFixed(1)} %`;

const kindWord = (kind: DraftKind): string => kind.toLowerCase();

/** A value and its limits, as sentences take them. */
export const limitsOf = ({ value, min, max }: Readonly<Record<"value" | "min" | "max", string | number>>) => ({
  value: String(value),
  min: String(min),
  max: String(max),
});

function staleDraft({ draft, slug, expected, actual }: Extract<Problem, { code: "STALE_DRAFT" }>): string {
  const named = `the ${kindWord(draft)} "${slug}"`;
  if (actual === null) return `There is no draft of ${named} at version ${expected}: it was discarded or never saved.`;
  if (expected === null)
    return `There is a draft of ${named} already, at version ${actual}. Name that version to save over it.`;
  return (
    `The draft of ${named} is at version ${actual}, not ${expected}: it was saved since you read it.` +
    ` Read it again, take over what you want, and name the new version.`
  );
}

const previewEnded = ({ why, at: instant }: Extract<Problem, { code: "PREVIEW_ENDED" }>): string =>
  why === "NO_DRAFT"
    ? "The draft that this preview showed was discarded."
    : `This preview ${why === "EXPIRED" ? "expired" : "was taken back"}${instant === null ? "" : ` at ${instant}`}. Ask its writer for a new address.`;

/** One sentence or two in English: where it is, what is wrong, what to do. Never names anything but the input itself. */
export function problemText(problem: Problem): string {
  return at(placeOf(problem)) + problemSentence(problem);
}

/** What a line names says the sentence, so the place is the line. */
function placeOf({ code, path }: Problem): Path {
  const [last] = path.slice(-1);
  const named = (code === "UNKNOWN_FOOD" && last === "food") || (code === "UNKNOWN_COMPONENT" && last === "component");
  return named ? path.slice(0, -1) : path;
}

function problemSentence(problem: Problem): string {
  switch (problem.code) {
    case "UNKNOWN_UNIT":
      return (
        `There is no unit "${problem.unit}".${offer("Near it:", problem.nearest)}` +
        ` Use the code of a unit, or \`own:\` followed by one of the food's own measures.`
      );
    case "AMBIGUOUS_UNIT":
      return english.mistake.AMBIGUOUS_UNIT({ unit: problem.unit, candidates: list(problem.candidates) });
    case "UNKNOWN_CODE":
      return unknownCodeSentence(problem);
    case "UNKNOWN_FOOD":
      if (openTableNumber(problem.food) !== null)
        return `The open food table has no number ${openTableNumber(problem.food)}. Look it up with \`catalogueFoods(search)\`.`;
      if (problem.offer?.reader === true)
        return english.mistake.UNKNOWN_FOOD({ food: problem.food, nearest: orNone(problem.offer.nearest) });
      return unknownFoodSentence(problem);
    case "AMBIGUOUS_FOOD":
      return english.mistake.AMBIGUOUS_FOOD({ food: problem.food, candidates: list(problem.candidates) });
    case "UNKNOWN_COMPONENT":
      return `There is no component "${problem.component}". Check the slug, or save the component first.`;
    case "UNKNOWN_PART":
      return `The food "${problem.food}" has no part "${problem.part}".${offer("Its parts:", problem.known)}`;
    case "UNKNOWN_ROUTE":
      return `The component "${problem.component}" has no route "${problem.route}".${offer("Its routes:", problem.known)}`;
    case "UNKNOWN_PLAN":
      return (
        `There is no published plan "${problem.publisher}/${problem.plan}"` +
        `${problem.revision === null ? "" : ` with the revision ${problem.revision}`}. Check both slugs.`
      );
    case "WITHDRAWN":
      return (
        `The publisher withdrew the plan "${problem.publisher}/${problem.plan}" on ${problem.at}.` +
        `${problem.because === null ? "" : ` The reason given: ${problem.because}`}`
      );
    case "UNKNOWN_PUBLISHER":
      return `There is no publisher "${problem.publisher}". Check the slug.`;
    case "UNKNOWN_TOKEN":
      return `There is no token "${problem.token}". Use the eight characters after "prepwright_", as shown in the list of tokens.`;
    case "UNKNOWN_WEBHOOK":
      return `There is no webhook "${problem.webhook}". Use an id from the list of webhooks.`;
    case "BAD_TIME":
      return timeSentence(problem);
    case "PUBLISH_AT_LATER":
      return `The draft of "${problem.plan}" says publish-at ${problem.at} (${problem.zone}), which is to come. Schedule its publication for then, or take the key out to publish it now.`;
    case "UNKNOWN_SCHEDULED":
      return `There is nothing scheduled "${problem.scheduled}". Use an id from the list of what is scheduled.`;
    case "NOT_WAITING":
      return `What was scheduled as "${problem.scheduled}" waits no more (${problem.state.toLowerCase().replace("_", " ")}). Schedule it again.`;
    case "CHANGED_SINCE_SCHEDULED":
      return `The plan "${problem.plan}" was published or withdrawn after this was scheduled (${problem.at}), so it was not published over that. Schedule the draft again.`;
    case "UNKNOWN_PREVIEW_LINK":
      return `There is no preview link "${problem.link}". Use an id from the list of preview links.`;
    case "PREVIEW_ENDED":
      return previewEnded(problem);
    case "UNKNOWN_DELIVERY":
      return `There is no delivery "${problem.delivery}". Use an id from the list of deliveries.`;
    case "SLUG_TAKEN":
      return `"${problem.slug}" is taken. Choose another slug.`;
    case "KEY_REUSED":
      return "This key was already used with different input. Use a new key for every new write.";
    case "KEY_IN_USE":
      return "The write with this key is still running. Send the same request again in a moment to get its result.";
    case "STALE_DRAFT":
      return staleDraft(problem);
    case "UNKNOWN_DRAFT":
      return `There is no draft of the ${kindWord(problem.draft)} "${problem.slug}". Save it first.`;
    case "FOOD_IS_SHARED":
      return (
        `There is a food "${problem.food}" already that all publishers share. Is yours the same?` +
        ` Then write "extends: ${problem.food}" to build on it; else give yours another slug.`
      );
    case "NOTHING_CHANGED":
      return `Revision ${problem.revision} already has exactly this content. Save your correction as a draft first.`;
    case "ALREADY_WITHDRAWN":
      return `Revision ${problem.revision} is already withdrawn, and the reason given to readers stays.`;
    case "COMPONENT_CYCLE":
      return `A component is made from itself: ${problem.cycle.join(" > ")}. Remove the component from one of these lines.`;
    case "COMPONENT_NOT_REACHED":
      return `No meal uses the component "${problem.component}". Use it in a meal or leave it out.`;
    case "NOT_CONVERTIBLE":
      return (
        `An amount of "${problem.item}" in ${problem.from} cannot be turned into ${problem.to}:` +
        ` ${missingWords(problem.missing, english)} is not known. Add that fact, or write the amount in ${problem.to}.`
      );
    case "BAD_AMOUNT":
      return `"${problem.written}" cannot be read as an amount: ${whyWords(problem.why)}.`;
    case "AMOUNT_OUT_OF_RANGE":
      return english.mistake.OUT_OF_RANGE(limitsOf(problem));
    case "SERVINGS_OUT_OF_RANGE":
      return english.mistake.SERVINGS_OUT_OF_RANGE(limitsOf(problem));
    case "MORE_PROBLEMS":
      return `${problem.count} more problems are not listed. Fix those above and try again.`;
    case "MORE_PUT_ASIDE":
      return `${problem.count} more rows were quarantined but not stored; only the first ${problem.kept} are. Fix what they have in common in the file, and import it again.`;
    case "TOO_LARGE":
      return `${problem.size} ${problem.what} are too many. The limit is ${problem.limit}.`;
    case "STEPS_IN_A_CIRCLE":
      return `These steps wait for each other in a circle: ${list(problem.steps)}. Remove one of them from \`after\` of another.`;
    case "WAITS_CANNOT_BE_KEPT":
      return english.noSession.WAITS_CANNOT_BE_KEPT({ steps: list(problem.steps) });
    case "KITCHEN_WITHOUT":
      return english.noSession.KITCHEN_WITHOUT({
        appliance: codeName("appliances", problem.appliance, english),
        steps: list(problem.steps),
      });
    case "KEPT_BEYOND_RULES":
    case "NEEDS_THE_COLD":
    case "FORM_UNKNOWN":
      return stopsPublishingSentence(problem);
    case "TRANSLATION_NUMBERS":
      return translationSentence(problem);
    case "TRANSLATES_NOTHING":
      return translatesNothing(problem);
    case "CLAIM_BROKEN":
    case "CLAIM_NOT_KNOWN":
    case "CLAIM_WITHOUT_RULE":
      return claimSentence(problem);
    case "RULE_SET_EXISTS":
      return `A rule set "${problem.set}" is already loaded with different content. Rule sets never change: give the new one its own code.`;
    case "DUPLICATE":
      return english.mistake.DUPLICATE({ value: problem.value });
    case "BAD_SHAPE":
      return `Expected ${problem.expected}, got ${problem.got}.`;
    case "CELL_IS_A_DATE":
      return (
        `"${problem.cell}" is a date: a spreadsheet program converted the amount into one.` +
        ` Enter the original text again, most likely ${problem.offers.map((each) => `"${each}"`).join(" or ")}, and save the column as text.`
      );
    case "ALLERGEN_WEAKENED":
      return (
        `${problem.food} is known as "${problem.allergen}: ${statement[problem.was]}", and the row says "${statement[problem.now]}".` +
        ` Nothing was changed. If the row is right, resolve it with the same text; otherwise dismiss it or correct the file.`
      );
    case "PRICE_OUT_OF_LINE":
      return (
        `The price ${problem.price} is ${timesWords(problem.ratio)} of what other packs of ${problem.food} cost for as much (${list(problem.packs)}).` +
        ` Check the price and the content (such as "1.500 kg"). If both are right, resolve the row with the same text.`
      );
    case "LIMIT_PASSED":
      return (
        `${(problem.share * 100).toFixed(1)} % of the rows would be ${problem.what}; the feed allows ${(problem.limit * 100).toFixed(1)} %.` +
        ` Nothing was loaded. Check the file; if it is right, run the import again with \`force\`.`
      );
    case "IMPORT_FAULT":
      return `The import failed because of an internal error. Include ${problem.run} when you report it. Starting it again continues where it stopped.`;
    case "RECIPE_OPEN":
      return openPointText(problem);
    case "LINE_OPEN":
      return openLineText(problem);
    case "FILE_NOT_HAD":
      return `The file could not be fetched: ${problem.why}.${problem.tries > 1 ? ` It was tried ${problem.tries} times.` : ""}`;
    case "COMPONENT_SET_ASIDE":
      return `The component "${problem.component}" in the same file could not be imported. Resolve it first, then this one.`;
    case "BAD_ARCHIVE":
      return archiveFaultSentence(problem.fault);
    case "PUBLISHER_NOT_EMPTY":
      return `The publisher "${problem.publisher}" already has drafts, plans, pictures, feeds or webhooks. Import into a new one: create it with the same slug in this installation.`;
    case "UNKNOWN_FEED":
      return `There is no feed "${problem.feed}". Check its publisher and its slug.`;
    case "UNKNOWN_RUN":
      return `There is no import "${problem.run}". Use an id from the list of the feed's runs.`;
    case "UNKNOWN_FILE":
      return `The feed has no file "${problem.file}". Use the id that the upload or the run returned.`;
    case "IMAGE_REFUSED":
      return imageSentence(problem.fault, problem.found);
    case "UNKNOWN_IMAGE":
      return `There is no picture "${problem.image}". Hand it in first; \`prepwright publish\` does so with files beside the documents.`;
    case "UNKNOWN_ROW":
      return `Nothing of line ${problem.line} (part ${problem.part}) is quarantined in this import.`;
    case "ROW_SETTLED":
      return `Line ${problem.line} is already resolved.`;
    case "IMPORT_GOING_ON":
      return `An import of the feed "${problem.feed}" is waiting or running. Wait until it ends, or cancel it.`;
    case "IMPORT_ENDED":
      return `The import "${problem.run}" has already ended. If it loaded anything, undo it instead.`;
    case "DELIMITER_UNCLEAR":
      return `The delimiter of the columns is unclear. The first line is: ${problem.firstLine} Name the delimiter in the feed.`;
    case "NOT_TEXT":
      return `Some bytes are not valid ${problem.encoding}. Save the file as UTF-8.`;
    case "BAD_HOUSEHOLD":
      return `"${problem.value}" is not ${whatWords(problem.what)}.`;
  }
}
