import type { Step } from "../model/component.js";
import type { Food } from "../model/food.js";
import { sumOfSpans, type Span } from "../nutrition/nutrients.js";
import { isWater } from "./contents/eaten-grams.js";
import type { ScaledLine } from "./scaled.js";

/** Share of a line that leaves with drained water, 0..1, and how that is known. */
export interface PouredAway {
  readonly share: Span;
  /** DRAINED: a step says it drains. DRAINED_BY_CLASS: it is a boiled pulse or grain. DRAINED_UNWEIGHED: nobody can say how much, so nothing is taken off. */
  readonly why: "DRAINED" | "DRAINED_BY_CLASS" | "DRAINED_UNWEIGHED";
}

/** A line that puts a food in, with its grams; of a line on a component only the grams are known. */
export interface PutIn {
  readonly line: ScaledLine;
  readonly food: Food | null;
  /** null: nobody knows. */
  readonly grams: Span | null;
}

export interface Pot {
  readonly lines: readonly PutIn[];
  readonly steps: readonly Step[];
  readonly keepsAs: string | null;
  /** What it weighs when it is done; null: not known. */
  readonly weighs: Span | null;
}

/** Boiled in more water than they take up, unless their steps say otherwise. */
const boiledClasses: ReadonlySet<string> = new Set(["cooked-legume", "cooked-grain"]);

/** Without a step that says it drains, less than this share of the water may as well have boiled off. */
const boilsOff = 1 / 3;

/** Without energy, and a tenth of it or more is sodium: table salt has 38.8 g, baking soda 27.4 g in 100 g (USDA SR). */
const isSalt = ({ nutrients }: Food): boolean =>
  nutrients !== null && (nutrients.per100g.energyKcal ?? 0) === 0 && (nutrients.per100g.sodiumMg ?? 0) >= 10_000;

/** Ids of the steps that come before each step. */
function stepsBefore(steps: readonly Step[]): ReadonlyMap<string, ReadonlySet<string>> {
  const byId = new Map(steps.map((step) => [step.id, step]));
  const known = new Map<string, Set<string>>();
  const before = (id: string): Set<string> => {
    const found = known.get(id);
    if (found !== undefined) return found;
    const all = new Set<string>();
    known.set(id, all);
    for (const each of byId.get(id)?.after ?? []) for (const one of [each, ...before(each)]) all.add(one);
    return all;
  };
  for (const { id } of steps) before(id);
  return known;
}

interface Kettle {
  readonly waters: readonly PutIn[];
  readonly salts: readonly PutIn[];
  readonly why: "DRAINED" | "DRAINED_BY_CLASS";
}

/** What is in the water of each step that says it drains. A line that no step before it uses is taken to go in later. */
function markedKettles({ steps }: Pot, waters: readonly PutIn[], salts: readonly PutIn[]): readonly Kettle[] {
  const before = stepsBefore(steps);
  const draining = steps.filter(({ drains }) => drains === true);
  const firstDrain = ({ line }: PutIn): string | null => {
    const uses = steps.filter((step) => step.lines.includes(line.line.id));
    if (uses.length === 0) return null;
    const later = draining.filter(({ id }) => uses.every((use) => before.get(id)?.has(use.id)));
    return later.find(({ id }) => !later.some((other) => before.get(id)?.has(other.id)))?.id ?? null;
  };
  return draining.map(({ id }) => ({
    waters: waters.filter((each) => firstDrain(each) === id),
    salts: salts.filter((each) => firstDrain(each) === id),
    why: "DRAINED" as const,
  }));
}

/**
 * The pots of a boiled pulse or grain whose steps do not say whether they drain: salt is in the water where a step uses both, or
 * where its step goes on in the water's appliance with nothing done at the sink between them.
 */
function kettlesByClass({ steps }: Pot, waters: readonly PutIn[], salts: readonly PutIn[]): readonly Kettle[] {
  const before = stepsBefore(steps);
  const usesOf = ({ line }: PutIn): readonly Step[] => steps.filter((step) => step.lines.includes(line.line.id));
  const sinks = steps.filter(({ appliance }) => appliance === "sink");
  const sinkBetween = (first: Step, second: Step): boolean =>
    sinks.some(({ id }) => before.get(id)?.has(first.id) && before.get(second.id)?.has(id));
  const inOnePot = (water: Step, salt: Step): boolean =>
    water.id === salt.id ||
    (water.appliance !== null &&
      water.appliance !== "sink" &&
      water.appliance === salt.appliance &&
      !sinkBetween(water, salt) &&
      !sinkBetween(salt, water));
  return salts.flatMap((salt): readonly Kettle[] => {
    const uses = usesOf(salt);
    const around = waters.filter((water) => {
      const with_ = usesOf(water);
      return uses.length > 0 && uses.every((use) => with_.some((each) => inOnePot(each, use)));
    });
    return around.length === 0 ? [] : [{ waters: around, salts: [salt], why: "DRAINED_BY_CLASS" }];
  });
}

/** What the food took up: what it weighs less what else went in. null: not known, or the weights contradict each other. */
function takenUp({ weighs, lines }: Pot): Span | null {
  if (weighs === null) return null;
  // What nobody can weigh counts as nothing: more water is then taken to stay, and more salt with it.
  const solid = sumOfSpans(
    lines.flatMap(({ food, grams }) =>
      grams === null || (food !== null && (isWater(food) || isSalt(food))) ? [] : [grams],
    ),
  );
  const low = weighs.low - solid.high;
  return low > 0 ? { low, high: weighs.high - solid.low } : null;
}

/**
 * What drained water takes with it, by id of the line: of the water what the food did not take up, of the salt dissolved in it
 * the same share. Salt of a later step stays. No allowance is made for what boils off.
 * Lines whose eaten share the writer states are left to that, and water that is thrown away is in no pot.
 */
export function pouredAway(pot: Pot): ReadonlyMap<string, PouredAway> {
  const open = pot.lines.filter(({ line }) => line.line.eaten === undefined);
  const waters = open.filter(({ food, grams }) => food !== null && grams !== null && isWater(food));
  const salts = open.filter(({ food }) => food !== null && isSalt(food));
  const said = pot.steps.some(({ drains }) => drains !== undefined);
  if (!said && !(pot.keepsAs !== null && boiledClasses.has(pot.keepsAs))) return new Map();
  const kettles = said ? markedKettles(pot, waters, salts) : kettlesByClass(pot, waters, salts);
  const stays = takenUp(pot);
  return new Map(
    kettles.flatMap(({ waters: poured, salts: dissolved, why }) => {
      const water = sumOfSpans(poured.flatMap(({ grams }) => grams ?? []));
      if (!(water.low > 0)) return [];
      const share =
        stays === null
          ? { low: 0, high: 0 }
          : { low: Math.max(0, 1 - stays.high / water.low), high: Math.max(0, 1 - stays.low / water.high) };
      if (why === "DRAINED_BY_CLASS" && !(share.low > boilsOff)) return [];
      const found: PouredAway = { share, why: stays === null ? "DRAINED_UNWEIGHED" : why };
      return [...poured, ...dissolved].map(({ line }) => [line.line.id, found] as const);
    }),
  );
}
