import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { parse as parseCsv } from "csv-parse/sync";
import { parse as parseYaml } from "yaml";

/**
 * Energy, protein, sodium and fibre of the demo's meals, from nothing but the documents as they are written and the open table:
 * a second, slow reckoning that shares no code with the service. It reads only what the demo writes.
 */

const seeds = path.resolve(import.meta.dirname, "../../seeds");
const columns = { energyKcal: "kcal", proteinG: "protein_g", sodiumMg: "sodium_mg", fibreG: "fibre_g" } as const;
const keys = { energyKcal: "energy-kcal", proteinG: "protein-g", sodiumMg: "sodium-mg", fibreG: "fibre-g" } as const;

export type PlainNutrient = keyof typeof columns;
export const plainNutrients = Object.keys(columns) as readonly PlainNutrient[];
export type PlainFigures = Record<PlainNutrient, number>;

interface Line {
  readonly id?: string;
  readonly food?: string;
  readonly component?: string;
  readonly part?: string;
  readonly amount?: string | number;
  readonly rule?: string;
  readonly form?: string;
  readonly measured?: string;
  readonly eaten?: string;
  readonly "thrown-away"?: string | boolean;
}
interface Step {
  readonly id?: string;
  readonly after?: readonly string[];
  readonly uses?: readonly string[];
  readonly drains?: string | boolean;
}
interface Measure {
  readonly one?: string;
  readonly many?: string;
  readonly name: string;
  readonly grams?: number;
  readonly pieces?: number;
}
interface Facts {
  readonly slug: string;
  readonly measures?: readonly Measure[];
  readonly densities?: readonly { readonly form?: string; readonly grams: number; readonly per: string }[];
}
interface Food extends Facts {
  readonly usda?: string;
  readonly parts?: readonly { readonly name: string; readonly "per-piece": string }[];
  readonly edible?: readonly { readonly form?: string; readonly share: string | number }[];
  readonly nutrients?: { readonly "per-100g": Readonly<Record<string, number>> };
}
interface Component extends Facts {
  readonly lines: readonly Line[];
  readonly steps: readonly Step[];
  readonly yield: { readonly amount: string };
  readonly batches?: string | Readonly<Record<string, string | number>>;
  readonly "measured-in": string;
}
interface Plan {
  readonly slug: string;
  readonly serves: number;
  readonly "measured-in": string;
  readonly meals: readonly { readonly slug: string; readonly lines: readonly Line[] }[];
}

async function documents<T extends { readonly slug: string }>(folder: string): Promise<ReadonlyMap<string, T>> {
  const names = (await readdir(path.join(seeds, folder))).filter((name) => name.endsWith(".yaml"));
  const read = await Promise.all(
    names.map(async (name) => parseYaml(await readFile(path.join(seeds, folder, name), "utf8")) as T),
  );
  return new Map(read.map((each) => [each.slug, each]));
}

const foods = await documents<Food>("foods");
const components = await documents<Component>("components");
export const plainPlans = await documents<Plan>("plans");
const table = new Map(
  (
    parseCsv(await readFile(path.join(seeds, "catalogue/usda-sr26-foods.csv"), "utf8"), { columns: true }) as Record<
      string,
      string
    >[]
  ).map((row) => [row["ndb_no"], row]),
);

/** Millilitres: NIST Handbook 44, appendix C (US); a metric tablespoon of 15 and teaspoon of 5 elsewhere. */
const spoons = (measuredIn: string): Readonly<Record<string, number>> =>
  measuredIn === "us customary" ? { cup: 236.5882365, tbsp: 14.78676478125, tsp: 4.92892159375 } : { tbsp: 15, tsp: 5 };
const grams: Readonly<Record<string, number>> = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };
const always: Readonly<Record<string, number>> = {
  ml: 1,
  l: 1000,
  "us-cup": 236.5882365,
  "us-tbsp": 14.78676478125,
  "us-tsp": 4.92892159375,
};

const number = (text: string): number =>
  text
    .split(" ")
    .map((each) => (each.includes("/") ? Number(each.split("/")[0]) / Number(each.split("/")[1]) : Number(each)))
    .reduce((a, b) => a + b, 0);
const percent = (text: string | number): number =>
  typeof text === "number" ? text : Number(text.replace("%", "")) / 100;
const isYes = (word: string | boolean | undefined): boolean => word === "yes" || word === true;

interface Amount {
  readonly g?: number;
  readonly ml?: number;
  readonly pieces?: number;
}

/** The lower end of what is written, in grams, millilitres or pieces. */
function amount(written: string | number, facts: Facts, measuredIn: string): Amount {
  const [, low, unit] = /^([\d./ ]+?)(?:-[\d./]+)? ?([a-z-]*)$/.exec(String(written).trim()) ?? [];
  if (low === undefined || unit === undefined) throw new Error(`not read: ${written}`);
  const count = number(low.trim());
  const plain = unit === "cups" ? "cup" : unit;
  if (plain in grams) return { g: count * grams[plain]! };
  const millilitres = always[plain] ?? spoons(measuredIn)[plain];
  if (millilitres !== undefined) return { ml: count * millilitres };
  const own = facts.measures?.find(({ name, one, many }) => [name, one, many].includes(unit));
  if (own?.grams !== undefined && !/^pieces?$/.test(unit)) return { g: count * own.grams };
  if (own?.pieces !== undefined) return { pieces: count * own.pieces };
  return { pieces: count };
}

/** Grams, through the food's own facts; null where it has none. */
function weight({ g, ml, pieces }: Amount, facts: Facts, form: string | undefined): number | null {
  if (g !== undefined) return g;
  if (ml !== undefined) {
    const density = facts.densities?.find((each) => each.form === form);
    if (density !== undefined) return (ml * density.grams) / amount(density.per, facts, "metric").ml!;
    return facts.slug === "water" ? ml : null;
  }
  const one = facts.measures?.find(({ name }) => name === "piece")?.grams;
  return one === undefined ? null : one * pieces!;
}

/** How much edible food a line of a food weighs, so many times; null where nobody knows. */
function edible(line: Line, times: number, measuredIn: string): number | null {
  const food = foods.get(line.food!)!;
  if (line.amount === undefined) return null;
  const taken = amount(line.amount, food, measuredIn);
  if (line.part !== undefined) return partWeight(line, taken, food) * times;
  const weighs = weight(taken, food, line.form);
  if (weighs === null) return null;
  const isReady = line.measured === "ready" && taken.pieces === undefined;
  const shares = food.edible ?? [];
  const share = shares.find(({ form }) => form === line.form) ?? shares.find(({ form }) => form === undefined);
  return weighs * times * (isReady || share === undefined ? 1 : percent(share.share));
}

/** Rows of the open table for parts: NDB numbers of its "Egg, white", "Egg, yolk", "Lemon peel", "Lemon juice" and "Orange juice, raw". */
const partRows: Readonly<Record<string, string>> = {
  "egg white": "01124",
  "egg yolk": "01125",
  "lemon zest": "09156",
  "lemon juice": "09152",
  "orange juice": "09206",
};

/** By weight as it is, by the piece what one piece gives. */
function partWeight({ part }: Line, taken: Amount, food: Food): number {
  const given = food.parts!.find(({ name }) => name === part)!["per-piece"];
  const of = (each: Amount): number => weight(each, food, part) ?? NaN;
  return taken.pieces === undefined ? of(taken) : taken.pieces * of(amount(given, food, "metric"));
}

function figures(slug: string): PlainFigures {
  const food: Partial<Food> = foods.get(slug) ?? {};
  const numbered = partRows[slug] ?? food.usda;
  const row = numbered === undefined ? undefined : table.get(numbered);
  const of = (code: PlainNutrient): number =>
    row === undefined ? Number(food.nutrients?.["per-100g"][keys[code]] ?? 0) : Number(row[columns[code]]);
  return { energyKcal: of("energyKcal"), proteinG: of("proteinG"), sodiumMg: of("sodiumMg"), fibreG: of("fibreG") };
}

const nameOf = ({ food, part }: Line): string => (part === undefined ? food! : `${food} ${part}`);

const growth = ({ rule }: Line, batches: number): number => {
  if (rule === "per batch") return Math.ceil(batches - 1e-9);
  if (rule?.startsWith("power")) return batches ** Number(rule.slice(6));
  return batches;
};

/** The least that covers so many batches, in as few pots as hold it. */
function batchesFor(wanted: number, rule: Component["batches"]): number {
  if (wanted <= 0) return 0;
  const {
    "at-least": least = 0,
    "at-most": most,
    "in-steps-of": step,
  } = rule === "whole" ? { "at-least": "1", "in-steps-of": "1" } : typeof rule === "object" ? rule : {};
  const [from, by] = [number(String(least)), step === undefined ? null : number(String(step))];
  for (let pots = 1; ; pots++) {
    const above = Math.max(0, wanted - from * pots);
    const size = from * pots + (by === null ? above : Math.ceil(above / by - 1e-9) * by);
    if (most === undefined || size <= number(String(most)) * pots + 1e-9) return size;
  }
}

const eatenShare = (line: Line): number =>
  isYes(line["thrown-away"]) ? 0 : line.eaten === undefined ? 1 : percent(line.eaten);

/** Which lines of salt and water stand in the water that the component's last draining step pours off. */
function inDrainedWater({ steps, lines }: Component): ReadonlySet<Line> {
  const at = steps.findLastIndex(({ drains }) => isYes(drains));
  const before = new Set(steps.slice(0, Math.max(0, at)).flatMap(({ uses = [] }) => uses));
  return new Set(
    lines.filter(
      (line) =>
        (line.food === "salt" || line.food === "water") && eatenShare(line) === 1 && before.has(line.id ?? line.food),
    ),
  );
}

/** Grams of each food in one meal, for so many, by the lower ends of ranges. */
export function plainMeals(plan: Plan, servings: number): ReadonlyMap<string, PlainFigures> {
  const taken = new Map<string, number>();
  const inYield = (line: Line, measuredIn: string, end: "low" | "high"): number => {
    const component = components.get(line.component!)!;
    const range = /-([\d./]+ .*)$/.exec(String(line.amount));
    const written = end === "high" && range !== null ? range[1]! : line.amount!;
    const [of, per] = [
      amount(written, component, measuredIn),
      amount(component.yield.amount, component, component["measured-in"]),
    ];
    if (per.g !== undefined) return (weight(of, component, line.form) ?? NaN) / per.g;
    if (per.ml !== undefined) return of.ml! / per.ml;
    return of.pieces! / per.pieces!;
  };
  const take = (line: Line, times: number, measuredIn: string): void => {
    if (line.component === undefined || line.amount === undefined) return;
    taken.set(line.component, (taken.get(line.component) ?? 0) + inYield(line, measuredIn, "high") * times);
  };
  for (const meal of plan.meals) for (const line of meal.lines) take(line, servings / plan.serves, plan["measured-in"]);
  // Users before what they use: a component that no other waiting one takes.
  const batches = new Map<string, number>();
  const waiting = new Set(reached(plan));
  while (waiting.size > 0) {
    const next = [...waiting].find((slug) => ![...waiting].some((other) => uses(other).includes(slug)))!;
    waiting.delete(next);
    const component = components.get(next)!;
    const made = batchesFor(taken.get(next) ?? 0, component.batches);
    batches.set(next, made);
    for (const line of component.lines) take(line, growth(line, made), component["measured-in"]);
  }
  const contents = new Map<string, ReadonlyMap<string, number>>();
  const contentsOf = (slug: string): ReadonlyMap<string, number> => {
    const known = contents.get(slug);
    if (known !== undefined) return known;
    const component = components.get(slug)!;
    const found = contentsOfPot(component, batches.get(slug)!);
    contents.set(slug, found);
    return found;
  };
  const add = (all: Map<string, number>, slug: string, more: number): void =>
    void all.set(slug, (all.get(slug) ?? 0) + more);
  /** In one batch's share of all that is made. */
  function contentsOfPot(component: Component, made: number): ReadonlyMap<string, number> {
    const weighs = weight(amount(component.yield.amount, component, component["measured-in"]), component, undefined);
    const water = inDrainedWater(component);
    let [poured, solid] = [0, 0];
    for (const line of component.lines) {
      if (line.food === undefined || eatenShare(line) === 0) continue;
      const here = edible(line, growth(line, made), component["measured-in"]) ?? 0;
      if (water.has(line) && line.food === "water") poured += here;
      if (line.food !== "water" && line.food !== "salt") solid += here;
    }
    const stays = poured > 0 && weighs !== null ? Math.min(1, (weighs * made - solid) / poured) : 1;
    const all = new Map<string, number>();
    for (const line of component.lines) {
      const times = growth(line, made);
      const share = water.has(line) ? stays : eatenShare(line);
      if (line.food !== undefined)
        add(all, nameOf(line), ((edible(line, times, component["measured-in"]) ?? 0) * share) / made);
      else if (line.amount !== undefined) {
        const part = (inYield(line, component["measured-in"], "low") * times * share) / made;
        for (const [food, each] of contentsOf(line.component!)) add(all, food, each * part);
      }
    }
    return all;
  }
  return new Map(
    plan.meals.map((meal) => {
      const all = new Map<string, number>();
      for (const line of meal.lines) {
        const times = line.rule?.startsWith("power")
          ? (servings / plan.serves) ** Number(line.rule.slice(6))
          : servings / plan.serves;
        if (line.food !== undefined) add(all, nameOf(line), edible(line, times, plan["measured-in"]) ?? 0);
        else if (line.amount !== undefined) {
          const part = inYield(line, plan["measured-in"], "low") * times;
          for (const [food, each] of contentsOf(line.component!)) add(all, food, each * part);
        }
      }
      const sum = { energyKcal: 0, proteinG: 0, sodiumMg: 0, fibreG: 0 };
      for (const [food, each] of all) {
        const per100 = figures(food);
        for (const code of plainNutrients) sum[code] += (per100[code] * each) / 100 / servings;
      }
      return [meal.slug, sum];
    }),
  );
}

const uses = (slug: string): readonly string[] =>
  components.get(slug)!.lines.flatMap(({ component }) => component ?? []);

function reached(plan: Plan): readonly string[] {
  const found = new Set<string>();
  const visit = (slug: string): void => {
    if (found.has(slug)) return;
    found.add(slug);
    uses(slug).forEach(visit);
  };
  plan.meals.flatMap(({ lines }) => lines.flatMap(({ component }) => component ?? [])).forEach(visit);
  return [...found];
}
