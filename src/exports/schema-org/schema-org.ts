import type { Graph, HowTo, ItemList } from "schema-dts";
import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import { runToEnd, type InSlices } from "../../domain/counted-work.js";
import type { DaySession } from "../../domain/plan/session/split-session.js";
import type { Addresses } from "../addresses.js";
import { writtenText } from "../document/written-text.js";
import { isoDuration } from "./iso-duration.js";
import { oneLine } from "../words/legible-text.js";
import { nameBook, type NameBook } from "../words/name-book.js";
import { mealAddress, schemaOrgRecipe } from "./schema-org-recipe.js";
import { taskText } from "../document/sections/session-section.js";
import { codeName } from "../words/rule-words.js";

/** A plan as schema.org knows it: an ItemList of its meals, each a Recipe, and the prep session as a HowTo. */
function* schemaOrg(answer: PlanAnswer, addresses: Addresses): InSlices<Graph> {
  const { scaled, sessions, reader } = answer;
  const book = nameBook(scaled.bundle, reader);
  const meals = scaled.meals.toSorted((a, b) => a.meal.day - b.meal.day);
  const recipes: ReturnType<typeof schemaOrgRecipe>[] = [];
  for (const meal of meals) {
    yield;
    recipes.push(schemaOrgRecipe(meal, answer, addresses, book));
  }
  return {
    "@context": "https://schema.org",
    "@graph": [
      planList(
        answer,
        addresses,
        meals.map(({ meal }) => meal.slug),
      ),
      ...recipes,
      ...sessions.filter(({ session }) => session.tasks.length > 0).map((each) => howTo(each, answer, addresses, book)),
    ],
  };
}

/** The same as JSON that may stand inside a script element of a page: nothing in it can end the element. */
export const schemaOrgText = (answer: PlanAnswer, addresses: Addresses): string =>
  runToEnd(schemaOrgTextInSlices(answer, addresses));

/** The same, a turn for each meal. */
export function* schemaOrgTextInSlices(answer: PlanAnswer, addresses: Addresses): InSlices<string> {
  const graph = yield* schemaOrg(answer, addresses);
  yield;
  return JSON.stringify(graph, null, 2).replace(
    /[<>&\u2028\u2029]/g,
    (mark) => `\\u${mark.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}

function planList({ scaled }: PlanAnswer, addresses: Addresses, meals: readonly string[]): Exclude<ItemList, string> {
  const { plan } = scaled.bundle;
  const introduction = plan.introduction === undefined ? "" : writtenText(plan.introduction);
  const said = oneLine([plan.summary ?? "", introduction].join(" "));
  return {
    "@type": "ItemList",
    "@id": `${addresses.revision}#plan`,
    url: addresses.revision,
    name: oneLine(plan.title),
    ...(said === "" ? {} : { description: said }),
    itemListOrder: "https://schema.org/ItemListOrderAscending",
    numberOfItems: meals.length,
    itemListElement: meals.map((slug, at) => ({
      "@type": "ListItem" as const,
      position: at + 1,
      url: mealAddress(slug, addresses),
      item: { "@id": mealAddress(slug, addresses) },
    })),
  };
}

/** A session; of a later day with its day in its name, since several share the address. */
function howTo(
  { day, session }: DaySession,
  { scaled }: PlanAnswer,
  addresses: Addresses,
  book: NameBook,
): Exclude<HowTo, string> {
  const { plan } = scaled.bundle;
  const machines = [...new Set(session.tasks.flatMap(({ appliance }) => appliance ?? []))];
  return {
    "@type": "HowTo",
    "@id": `${addresses.revision}#session${day === 0 ? "" : `-day-${day}`}`,
    name: oneLine(
      `${book.words.sessionOf({ title: plan.title })}${day === 0 ? "" : ` (${book.words.sessionOfDay({ day })})`}`,
    ),
    totalTime: isoDuration(session.totalMinutes),
    ...(machines.length === 0
      ? {}
      : {
          tool: machines.map((code) => ({
            "@type": "HowToTool" as const,
            name: codeName("appliances", code, book.words),
          })),
        }),
    step: session.tasks.map((task, at) => ({
      "@type": "HowToStep" as const,
      position: at + 1,
      text: oneLine(
        task.eveningBefore ? `${taskText(task, book)} (${book.words.eveningBefore})` : taskText(task, book),
      ),
    })),
  };
}
