// What an app shows on a Saturday: what to buy, and when to begin what.
//   npx tsx examples/app-client/weekend.ts http://127.0.0.1:4000 third-gate-allotments/bean-night 5
// Types are generated from weekend.graphql and the service's schema: npx graphql-codegen --config codegen.config.ts
import { ask } from "./ask.js";
import { WeekendDocument, type WeekendQuery } from "./generated.js";

const [service = "http://127.0.0.1:4000", name = "third-gate-allotments/bean-night", servings = "4"] =
  process.argv.slice(2);
const [publisher = "", slug = ""] = name.split("/");
const household = { region: "XA", currency: "XTS" };

const { plan } = await ask(service, WeekendDocument, { publisher, slug, servings: Number(servings), household });
const { scaled = null, problems = [] } = plan?.scaling ?? {};
if (plan === null) {
  process.stderr.write(`There is no plan ${name}.\n`);
  process.exitCode = 1;
} else if (scaled === null) {
  process.stderr.write(problems.map(({ where, text }) => `${where}: ${text}\n`).join(""));
  process.exitCode = 1;
} else process.stdout.write(`${lines(plan, scaled).join("\n")}\n`);

function lines({ title, revision }: Pick<Plan, "title" | "revision">, scaled: Scaled): readonly string[] {
  const { session, shoppingList, allergens, warnings } = scaled;
  return [
    `${title} (revision ${revision}), for ${servings}`,
    ...shoppingList.aisles.flatMap((aisle) => ["", aisle.name, ...aisle.lines.map(shoppingLine)]),
    "",
    ...(session === null ? ["No order of the steps fits this kitchen."] : sessionLines(session)),
    "",
    // Not known is said too: it is not the same as free from.
    ...allergens.findings
      .filter(({ presence }) => presence !== "DOES_NOT_CONTAIN")
      .map(({ name: allergen, presence }) => `${allergen}: ${presence.toLowerCase().replaceAll("_", " ")}`),
    ...warnings.map(({ message }) => `! ${message}`),
  ];
}

type Plan = NonNullable<WeekendQuery["plan"]>;
type Scaled = NonNullable<Plan["scaling"]["scaled"]>;

function sessionLines({ totalMinutes, handsOnMinutes, tasks }: NonNullable<Scaled["session"]>): readonly string[] {
  return [
    `${totalMinutes} minutes, ${handsOnMinutes} of them with your hands`,
    ...tasks.map(({ startMinute, text }) => `  ${startMinute} min: ${text}`),
  ];
}

type ShoppingLine = Scaled["shoppingList"]["aisles"][number]["lines"][number];

function shoppingLine({ food, need, buy }: ShoppingLine): string {
  const packs = buy.map(({ count, pack }) => `${count} × ${pack.name}`).join(" + ");
  return `  ${food.name}: ${need?.text ?? "to taste"}${packs === "" ? "" : ` (${packs})`}`;
}
