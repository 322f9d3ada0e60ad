import type { AllergenPresence, NutrientCode } from "../../domain/model/food.js";
import type { StoragePlace } from "../../domain/model/keeping.js";
import type { RegionOwner } from "../../domain/model/region.js";
import type { LabelScheme } from "../../domain/nutrition/label-rounding.js";
import type { Nutrition } from "../../domain/nutrition/nutrients.js";

/** Column names of the shopping list as a table. */
export type CsvColumn =
  "aisle" | "food" | "need" | "unit" | "onHand" | "toBuy" | "packs" | "price" | "currency" | "uses" | "optional";

/**
 * Every fixed word of every way out, for one language. Numbers and amounts arrive as text, written for the reader's locale.
 * To add a language: one file beside words/english.ts, and a line in `byLanguage`.
 */
export interface Words {
  /** BCP 47 language of the words. */
  readonly language: string;
  readonly forServings: (count: string) => string;
  readonly servings: (count: string) => string;
  readonly days: (count: string) => string;
  readonly hours: (count: string) => string;
  readonly foods: (count: string) => string;
  readonly roughly: (amount: string) => string;
  readonly dayOfPlan: (day: number) => string;
  readonly by: string;
  readonly revision: (number: number, date: string) => string;
  readonly withdrawn: string;
  readonly changed: string;
  readonly thisRevision: string;
  readonly newestRevision: string;
  readonly calendar: string;
  readonly listAddress: string;
  readonly meals: string;
  readonly mealOf: (plan: string) => string;
  readonly makeAhead: string;
  readonly made: (amount: string) => string;
  /** null: nothing. */
  readonly leftOver: (amount: string | null) => string;
  readonly onHand: (amount: string) => string;
  readonly toTaste: string;
  readonly optional: string;
  readonly plusMore: string;
  /** What one of so many weighs. */
  readonly each: (weight: string) => string;
  readonly inPlaceOf: (food: string) => string;
  readonly forThe: (what: string) => string;
  readonly shoppingList: string;
  readonly shoppingListFor: (plans: string) => string;
  readonly packOf: (count: string, pack: string, content: string) => string;
  readonly buy: string;
  /** Title over what need not be bought. */
  readonly inTheHouse: string;
  readonly uses: string;
  readonly partsOver: (parts: string) => string;
  readonly cost: string;
  readonly atTill: (price: string) => string;
  readonly perServing: (price: string, servings: string) => string;
  readonly withoutPrice: (foods: string) => string;
  readonly noPrice: string;
  readonly session: string;
  readonly sessionOf: (title: string) => string;
  readonly eveningBefore: string;
  readonly eveningTaskOf: (title: string) => string;
  readonly sessionTakes: (all: string, hands: string) => string;
  readonly longerThanPromised: (promised: string) => string;
  /** @param cooks of whom none has more than a day's work */
  readonly moreThanADay: (cooks: number) => string;
  readonly overDays: (sessions: number) => string;
  readonly sessionOfDay: (day: number) => string;
  readonly madeThen: (things: string) => string;
  readonly buyRawThen: string;
  /** Of one of several days, where dividing the work was not enough. */
  readonly stillMoreThanADay: (cooks: number) => string;
  /** A meal whose hour comes before it is ready; `ready` null: not on that day. */
  readonly lateMeal: (meal: string, at: string, ready: string | null) => string;
  readonly eatenAt: (day: string, time: string) => string;
  readonly clearingUp: (minutes: string) => string;
  readonly noOrder: string;
  /** Several do. */
  readonly noOneSession: string;
  readonly time: string;
  readonly what: string;
  readonly work: Readonly<Record<"HANDS_ON" | "UNATTENDED", string>>;
  readonly how: string;
  readonly cook: (numbers: string) => string;
  readonly load: (first: number, last: number, of: number) => string;
  readonly wash: (machine: string) => string;
  readonly machine: string;
  /** Said at the top where neither the reader, the plan nor its publisher names a region. */
  readonly regionUnknown: string;
  readonly regionNamed: (region: string, by: Exclude<RegionOwner, "READER">) => string;
  readonly regionStandsIn: (region: string, others: string) => string;
  readonly keeping: string;
  readonly where: string;
  readonly keeps: string;
  readonly whoSays: string;
  readonly until: (when: string) => string;
  readonly places: Readonly<Record<StoragePlace, string>>;
  readonly forQuality: string;
  readonly limitedBy: (part: string) => string;
  readonly writerSays: (length: string) => string;
  readonly ruleSays: (length: string, region: string | null) => string;
  readonly byAnalogy: string;
  readonly decides: string;
  readonly lastDay: (thing: string) => string;
  /** Of a range that its source prints, the upper and the lower end. */
  readonly plannedOf: (upTo: string, planned: string) => string;
  readonly keepsUntilNow: (thing: string) => string;
  readonly contents: string;
  readonly allergenLists: (lists: string) => string;
  readonly presence: Readonly<Record<AllergenPresence, string>>;
  /** Before foods whose data leave an allergen open. */
  readonly labelsToRead: string;
  readonly labelsFor: (foods: string, names: string) => string;
  /** Before allergens that no food is made with. */
  readonly noIngredient: string;
  readonly tracesNotKnown: string;
  readonly glutenFreeOnly: (foods: string) => string;
  readonly alsoContains: string;
  readonly noLists: string;
  readonly fits: string;
  readonly breaks: string;
  readonly dietUnknown: string;
  readonly nutrition: string;
  readonly nutrient: string;
  /** One person's share of so many meals. */
  readonly perPersonAll: (meals: number) => string;
  readonly meal: string;
  readonly hundredGrams: string;
  /** Of a figure nothing of which is known. */
  readonly figureUnknown: string;
  /** Share of the food whose figures are known, nutrients of which another share is, and foods that are missing. */
  readonly knownFor: (
    share: string,
    others: readonly { readonly nutrient: string; readonly share: string }[],
    missing: string | null,
  ) => string;
  readonly atLeast: (figure: string) => string;
  readonly aboutFigure: (figure: string) => string;
  readonly missingEnergy: (foods: string) => string;
  readonly plusWhatYouAdd: (foods: string) => string;
  readonly shareOf: (share: string, food: string) => string;
  readonly notEaten: (foods: string) => string;
  readonly pouredAway: (shares: string) => string;
  readonly drainedByClass: string;
  readonly drainedUnweighed: (foods: string) => string;
  readonly basis: Readonly<Record<Nutrition["basis"], string>>;
  readonly roundedBy: Readonly<Record<LabelScheme, string>>;
  readonly unweighed: (foods: string) => string;
  readonly nutrients: Readonly<Record<NutrientCode, string>>;
  readonly saltG: string;
  readonly cautions: string;
  readonly about: (things: string) => string;
  readonly source: (titles: string) => string;
  readonly restsOn: (titles: string) => string;
  readonly warnings: string;
  readonly makeAheadKeyword: string;
  readonly csv: Readonly<Record<CsvColumn, string>>;
}
