import { runToEnd, unlimitedWork, type InSlices, type Work } from "../counted-work.js";
import type { Step } from "../model/component.js";
import type { Food } from "../model/food.js";
import type { KeepingClass } from "../model/keeping.js";
import { wordsOfName } from "../quantity/food-name.js";
import { regionCovers } from "../model/region.js";
import type { Source } from "../model/source.js";
import type { Subject } from "./guidance.js";
import { classesAround } from "./keeping-classes.js";
import type { CautionRule, FoodSafetyRules, RegionalCaution } from "./rule.js";

/** A caution that is due. Its text is that of the rule data, the same in every output. */
export interface Caution {
  readonly code: string;
  readonly text: string;
  readonly source: Source;
  /** Titles and sections of the published rules it rests on. */
  readonly restsOn: readonly Source[];
  /** What it is about; empty: everything. */
  readonly about: readonly Subject[];
}

/** A component or a meal, as far as cautions look at it. */
export interface CautionedThing {
  readonly subject: Subject;
  readonly keepsAs: string | null;
  /** Caution codes its writer named. */
  readonly codes: readonly string[];
  readonly steps: readonly Pick<Step, "text" | "said" | "appliance">[];
  /** Its steps heat it. Absent: nobody looked. */
  readonly isHeated?: boolean;
  /** Foods in its own lines. */
  readonly foods: readonly Pick<Food, "slug" | "names" | "keepsAs">[];
}

export interface CautionsFound {
  /** In the order of the rules; those that always apply are always there. */
  readonly cautions: readonly Caution[];
  /** Codes a writer named that the rules do not know. */
  readonly unknown: readonly { readonly subject: Subject; readonly code: string }[];
}

/**
 * The cautions that are due for these things: by the classes they keep as, by their foods, by words in the names of
 * foods and in steps that the data lists, and by the codes their writers named. Words can only add a caution. Of two about the
 * same thing that the rules call stricter and laxer, only the stricter is printed.
 *
 * @param region of the reader; null: not known, and the strictest is printed
 */
export const cautionsFor = (
  things: readonly CautionedThing[],
  rules: Pick<FoodSafetyRules, "cautions" | "classes" | "keeping" | "handling">,
  region: string | null = null,
): CautionsFound => runToEnd(cautionsInSlices(things, rules, region, unlimitedWork));

/** Steps in which one food, or the thing itself, is held against one rule; and how many are in one turn. */
const stepsOfFood = 2;
const foodsInTurn = 500;

/** The same turn by turn. */
export function* cautionsInSlices(
  things: readonly CautionedThing[],
  rules: Pick<FoodSafetyRules, "cautions" | "classes" | "keeping" | "handling">,
  region: string | null,
  work: Work,
): InSlices<CautionsFound> {
  const sources = new Map([...rules.keeping, ...rules.handling].map(({ id, source }) => [id, source]));
  const known = new Set(rules.cautions.map(({ code }) => code));
  const cautions: Caution[] = [];
  for (const rule of rules.cautions) {
    const stricter = rules.cautions.filter(({ code }) => rule.givesWayTo?.includes(code));
    const about: Subject[] = [];
    yield;
    let looked = 0;
    for (const thing of things) {
      const size = 1 + thing.foods.length;
      work.step(stepsOfFood * size);
      looked += size;
      if (looked >= foodsInTurn) {
        looked = 0;
        yield;
      }
      const isOwn = isDue(rule, thing, rules.classes) && !stricter.some((other) => isDue(other, thing, rules.classes));
      if (isOwn) about.push(thing.subject);
    }
    if (about.length === 0 && !rule.when.always) continue;
    const { text, source, rules: ids } = inRegion(rule, region);
    const restsOn = ids.flatMap((id) => sources.get(id) ?? []);
    cautions.push({ code: rule.code, text, source, restsOn, about: rule.when.always ? [] : about });
  }
  const unknown = things.flatMap(({ subject, codes }) =>
    codes.flatMap((code) => (known.has(code) ? [] : [{ subject, code }])),
  );
  return { cautions, unknown };
}

/** Thresholds and units of the reader's region only; of all of them where it is not known. */
const inRegion = (rule: CautionRule, region: string | null): Pick<RegionalCaution, "text" | "rules" | "source"> =>
  (region === null ? undefined : rule.byRegion?.find((each) => regionCovers(each.region, region))) ?? rule;

/** Code of the class that all cooked food lies in. What nobody classed and is cooked belongs to it. */
const cookedFood = "leftovers";

function isDue({ code, when }: CautionRule, thing: CautionedThing, known: readonly KeepingClass[]): boolean {
  if (thing.codes.includes(code)) return true;
  const classes = [thing.keepsAs, ...thing.foods.map(({ keepsAs }) => keepsAs)].flatMap((keepsAs) =>
    // A rule that only stands in for a missing one says nothing about how such food is cooled or heated.
    keepsAs === null
      ? []
      : classesAround(keepsAs, known).flatMap((around) => (around.throughAnalogy ? [] : [around.code])),
  );
  const own = thing.keepsAs === null ? [] : classesAround(thing.keepsAs, known);
  // A component of which nobody says what kind of food it is may well need the cold.
  const unclassed = own.length === 0 && thing.subject.kind === "COMPONENT";
  if (when.perishable && (unclassed || own.some(({ perishable }) => perishable))) return true;
  if (when.perishable && thing.subject.kind === "MEAL" && hasPerishable(thing, known)) return true;
  if (when.keepsAs.some((keepsAs) => classes.includes(keepsAs))) return true;
  if (unclassed && thing.isHeated === true && when.keepsAs.includes(cookedFood)) return true;
  const byFood = when.foods.length > 0 || when.foodWords.length > 0;
  const byStep = when.stepWords.length > 0;
  if (!byFood && !byStep) return false;
  return (!byFood || hasFood(when, thing)) && (!byStep || hasStep(when, thing));
}

/** Food that goes straight into a meal waits for it raw: the fish in the fridge, not what was made of it. */
const hasPerishable = ({ foods }: CautionedThing, known: readonly KeepingClass[]): boolean =>
  foods.some(({ keepsAs }) => keepsAs !== null && classesAround(keepsAs, known).some(({ perishable }) => perishable));

function hasFood({ foods, foodWords }: CautionRule["when"], thing: CautionedThing): boolean {
  return thing.foods.some(
    (food) => foods.includes(food.slug) || plainNames(food).some((name) => hasWords(name, foodWords)),
  );
}

const hasStep = ({ stepWords }: CautionRule["when"], { steps }: CautionedThing): boolean =>
  steps.some((step) => plainStep(step).some((text) => hasWords(text, stepWords)));

const plain = (text: string): string =>
  ` ${text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim()} `;

/**
 * Whole words in a row, whatever stands between them: `slow-cooker` is `slow cooker`; `price` is not `rice`. Where languages join
 * words, a star stands for the rest of one: `hähnchen*` is in `Hähnchenbrustfilet`, `*reis` in `Basmatireis`.
 */
const hasWords = (within: string, words: readonly string[]): boolean =>
  plainWords(words).some((word) => within.includes(word));

/** A word of a rule, open where a star stands. */
function starred(word: string): string {
  const whole = plain(word);
  return whole.slice(word.startsWith("*") ? 1 : 0, word.endsWith("*") ? -1 : undefined);
}

/** Foods, steps and words of rules are held against each other for every plan, and nobody changes them: each is made plain once. */
function oncePlain<Thing extends object>(
  textsOf: (thing: Thing) => readonly string[],
  makePlain: (text: string) => string = plain,
) {
  const known = new WeakMap<Thing, readonly string[]>();
  return (thing: Thing): readonly string[] => {
    const found = known.get(thing) ?? textsOf(thing).map(makePlain);
    known.set(thing, found);
    return found;
  };
}

const plainWords = oncePlain<readonly string[]>((words) => words, starred);

const plainNames = oncePlain<CautionedThing["foods"][number]>(({ slug, names }) => [
  slug,
  ...names.flatMap(wordsOfName),
]);

const plainStep = oncePlain<CautionedThing["steps"][number]>(({ text, said = text, appliance }) => [
  said,
  appliance ?? "",
]);
