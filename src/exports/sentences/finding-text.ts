import type { NamedFinding } from "../../domain/plan/check/finding.js";
import { claimSentence } from "./claim-sentence.js";
import { cautionsSentence } from "./cautions-sentence.js";
import { heatIn } from "../words/degree-text.js";
import { pathText } from "../words/path-text.js";
import { wordsFor } from "../words/words-for.js";
import { translationSentence } from "./translation-sentence.js";
import { stopsPublishingSentence } from "./stops-publishing-sentence.js";

const english = wordsFor("en");

const hours = (count: number): string => english.hours({ count: Number(count.toFixed(1)) });

const days = (count: number): string => english.days({ count: Number(count.toFixed(1)) });

type Named = "components" | "foods" | "meals";

/** By its title, or else its slug. */
const nameIn =
  ({ names }: NamedFinding) =>
  (kind: Named, slug: string): string =>
    names?.get(`${kind}/${slug}`) ?? slug;

/** A component or a food. */
const thingIn =
  ({ names }: NamedFinding) =>
  (slug: string): string =>
    names?.get(`components/${slug}`) ?? names?.get(`foods/${slug}`) ?? slug;

/** The meal or component it is about, by its title; null: the plan itself. */
export function aboutWhat(finding: NamedFinding): string | null {
  const [kind, slug] = finding.path;
  return (kind === "components" || kind === "meals") && slug !== undefined ? nameIn(finding)(kind, String(slug)) : null;
}

function keptTooLong(finding: Extract<NamedFinding, { code: "KEPT_TOO_LONG" }>): string {
  const { hoursAfter, meal } = finding;
  const eaten = nameIn(finding)("meals", meal);
  const subject = aboutWhat(finding) ?? finding.subject;
  const wayOut = "Freeze a share, make it later, or move the meal.";
  if (hoursAfter === undefined)
    return `"${subject}" keeps ${days(finding.days)}, and "${eaten}" is on day ${finding.day}. ${wayOut}`;
  const comes = subject === eaten ? "it is eaten" : `"${eaten}" is eaten`;
  return `"${subject}" keeps ${hours(finding.days * 24)}, and ${comes} ${hours(hoursAfter)} after a session that begins at 09:00. ${wayOut}`;
}

function sentence(finding: NamedFinding): string {
  const name = nameIn(finding);
  const thing = thingIn(finding);
  switch (finding.code) {
    case "APPLIANCE_NOT_IN_KITCHEN":
      return `The plan's kitchen has no "${finding.appliance}", so the session assumes one. Add it to the kitchen, or use another appliance.`;
    case "KEPT_BEYOND_RULES":
    case "NEEDS_THE_COLD":
    case "FORM_UNKNOWN":
      return stopsPublishingSentence(finding, name);
    case "LINE_IN_NO_STEP":
      return `No step uses "${thing(finding.item)}". Name it in a step, or remove the line.`;
    case "AMOUNT_MISSING":
      return `"${thing(finding.item)}" has no amount, so the amount to make is unknown.`;
    case "NOT_MEASURABLE":
      return `"${thing(finding.item)}" is less than a kitchen can measure at these servings. Write a larger batch, or "to taste".`;
    case "COMPONENT_NEVER_EATEN":
      return `"${name("components", finding.component)}" is made, but no meal uses it.`;
    case "COMPONENT_LEFT_OVER":
      return `${Math.round(finding.share * 100)} % of "${name("components", finding.component)}" is left over. Use it in a meal, or allow smaller batches.`;
    case "KEPT_TOO_LONG":
      return keptTooLong(finding);
    case "NOBODY_SAYS_HOW_LONG":
      return `There is no keeping time for "${name("components", finding.subject)}". Add a keeping time with its source.`;
    case "OVEN_WITHOUT_TEMPERATURE":
      return `Step "${finding.step}" bakes without a temperature. Add \`celsius\`.`;
    case "OVEN_NOT_PREHEATED":
      return `Step "${finding.step}" bakes at ${heatIn(finding.temperatureC, "oven", finding.degrees ?? "C")}, and nothing heats the oven before it.`;
    case "FIXED_FOR_MORE":
      return `Step "${finding.step}" takes the same time for any amount, but ${Number(finding.batches.toFixed(2))} batches are. Leave \`grows\` out, or write \`per batch\` or \`per load\`.`;
    case "FOOD_OF_OPEN_TABLE":
      return `"${thing(finding.food)}" is known by its figures in the open food table alone. Nobody says what allergens it contains, which diets it fits, how long it keeps and what it costs: they stay unknown for readers. Save a food of your own with \`usda\` and what you know.`;
    case "CUT_IN_NO_STEP":
      return `"${thing(finding.item)}" is prepared by cutting, but no step that uses it cuts it. Add the cutting to a step, so that its time counts.`;
    case "HOT_MAY_WAIT":
      return `Nothing says how long what step "${finding.step}" heats may stand after it. Write \`wait-at-most\` in the step that drains or chills it.`;
    case "NEVER_CHILLED":
      return `"${name("components", finding.subject)}" is cooked and kept for "${name("meals", finding.meal)}" on day ${finding.day}, and no step puts it into the cold. Add one that does, with \`chills: yes\`: within ${finding.within} minutes from the heat, unless your local code asks for less.`;
    case "CAUTION_NOT_NAMED":
      return cautionsSentence(name("components", finding.subject), [finding.caution]);
    case "CAUTION_UNKNOWN":
      return `"${name("components", finding.subject)}" lists the caution "${finding.caution}", which is in no published rule.`;
    case "CLAIM_BROKEN":
    case "CLAIM_NOT_KNOWN":
    case "CLAIM_WITHOUT_RULE":
      return claimSentence(finding, thing);
    case "TRANSLATION_NUMBERS":
    case "TRANSLATION_INCOMPLETE":
    case "TRANSLATION_OUTDATED":
    case "TRANSLATION_ORPHANED":
    case "TRANSLATION_LINKS":
      return translationSentence(finding);
    case "SESSION_TOO_LONG":
      return `The session takes ${Math.ceil(finding.minutes)} minutes, but ${finding.promised} were promised.`;
  }
}

/** What, where and what to do, in English. A place is named where the sentence does not name it. */
export function findingText(finding: NamedFinding): string {
  const said = sentence(finding);
  const [kind, slug, , route] = finding.path;
  if (kind === "translations") return said;
  const about = aboutWhat(finding);
  if (about === null)
    return kind === "claims" || kind === "promised-time" ? said : `${pathText(finding.path)}: ${said}`;
  const made = finding.path[2] === "routes" ? `${about} (${route})` : about;
  return slug === undefined || said.includes(`"${made}"`) ? said : `${made}: ${said}`;
}
