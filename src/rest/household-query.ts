import { z } from "zod";
import type { MeasureSystem } from "../domain/model/amount.js";
import type { RouteMode } from "../domain/model/household.js";
import type { Path, Problem } from "../domain/problem.js";
import type { GivenHousehold } from "../services/answers/read-household.js";
import type { GivenOnHand } from "../services/answers/read-on-hand.js";
import { measureSystems } from "../domain/model/amount.js";
import { badParameter, inQuery, queryOf, type Parameter, type Query } from "./parameter.js";

const routeModes: readonly RouteMode[] = ["AS_WRITTEN", "CHEAPEST", "LEAST_WORK"];

/** A household as parameters of an address. Forms of the pages use the same names. */
const writtenParameters: readonly Parameter[] = [
  inQuery(
    "region",
    "ISO 3166 code of where the reader shops and eats: picks packs, keeping rules and allergen lists. Default: the region of the plan, or else of its publisher; without either the strictest rules of all regions.",
    z.string().max(6),
    { example: "GB" },
  ),
  inQuery("currency", "ISO 4217 code to pay in.", z.string().max(3), { example: "EUR" }),
  inQuery("measures", "Measures to show amounts in. Default: those of the plan.", z.enum(measureSystems)),
  inQuery("locale", "BCP 47 tag of the reader's language.", z.string().max(60), { example: "en-GB" }),
  inQuery("diet", "Code of a diet to keep to. May be repeated.", z.string().max(200), {
    repeats: true,
    example: "gluten-free",
  }),
  inQuery(
    "avoid-allergen",
    "An allergen that nobody at the table eats: its code, or its name in any language; a group stands for all its members. Works like a diet: swaps that are known to be without it are taken, and what contains it, may contain traces, or is not known, is a warning. May be repeated.",
    z.string().max(200),
    { repeats: true, example: "milk" },
  ),
  inQuery(
    "dislike",
    "A food that nobody at the table likes: its slug, or its name in any language. A swap or a route without it is taken where the writer offers one, optional lines of it are left out; where it stays, a warning names the meals. May be repeated.",
    z.string().max(200),
    { repeats: true, example: "dill" },
  ),
  inQuery(
    "eaters",
    "So many people and the share of a serving each eats, if not everybody eats a whole one. May be repeated; the counts add up to the servings, or are the servings where none are asked for.",
    z.string().max(80),
    { repeats: true, example: "2x1/2" },
  ),
  inQuery(
    "swap",
    "A food to take for another wherever a line offers it: two slugs. May be repeated.",
    z.string().max(400),
    { repeats: true, example: "bulgur:buckwheat-groats" },
  ),
  inQuery(
    "routes",
    "How to get components that can be made or bought, where `route` does not say.",
    z.enum(routeModes),
  ),
  inQuery(
    "route",
    "The route for one component: its slug and the name of the route. May be repeated.",
    z.string().max(400),
    { repeats: true, example: "boiled-lentils:tinned" },
  ),
  inQuery(
    "on-hand",
    "Something already in the kitchen: a food by its slug or its name in any language, or `component/` and the slug of one, then a colon and an amount as people say it: `500g`, `half a bag`, `2 tins`. After a semicolon `use-by=` and a day, or `as-other-form` to take it also for a food it can be turned into with more work. May be repeated; what only differs in the amount is added up.",
    z.string().max(400),
    { repeats: true, example: "carrot:500 g;use-by=2026-03-04" },
  ),
  inQuery(
    "start",
    "When the prep session begins, as the clock on the kitchen wall says, or as an instant in UTC. Needs `zone`.",
    z.string().max(60),
    { example: "2026-03-01T10:00" },
  ),
  inQuery("cooks", "How many cook together. Default: as many as the plan assumes.", z.string().max(4), {
    example: "2",
  }),
  inQuery(
    "appliance",
    "How many of an appliance the kitchen has, where the plan assumes another number: its code, a colon and a count. May be repeated.",
    z.string().max(100),
    { repeats: true, example: "oven-shelf:1" },
  ),
  inQuery("zone", "IANA name of the reader's time zone.", z.string().max(100), { example: "Europe/Lisbon" }),
];

/** Names of a household in a body, and the parameters that say the same. */
const namesInBody: Readonly<Record<string, string>> = {
  diets: "diet",
  avoidAllergens: "avoid-allergen",
  dislikes: "dislike",
  swaps: "swap",
  onHand: "on-hand",
};

/** Each parameter, and those of another name in bodies by that name too. */
export const householdParameters: readonly Parameter[] = writtenParameters.flatMap((parameter) => {
  const other = Object.keys(namesInBody).find((name) => namesInBody[name] === parameter.name);
  return other === undefined
    ? [parameter]
    : [
        parameter,
        { ...parameter, name: other, description: `The same as \`${parameter.name}\`, by its name in bodies.` },
      ];
});

/** What was asked by either of its names, by the one of addresses. */
export const byOneName = (query: Query): Query =>
  queryOf([...query].flatMap(([name, values]) => values.map((value) => [namesInBody[name] ?? name, value] as const)));

/** Where a household has what a parameter says that may be repeated. */
const listed = {
  eaters: ["eaters"],
  swap: ["swaps"],
  route: ["routes", "byName"],
  "on-hand": ["onHand"],
} as const;

type Listed = keyof typeof listed;

/** The same of one whose words are few. */
const enumerated = { measures: ["measures"], routes: ["routes", "mode"] } as const;

interface ReadHousehold {
  readonly household: GivenHousehold;
  readonly problems: readonly Problem[];
}

/** Reads the parameters into a household that is still to be checked, leaving out what cannot be read. */
export function readHouseholdQuery(sent: Query): ReadHousehold {
  const query = byOneName(sent);
  const problems: Problem[] = [];
  const one = (name: string): string | null => query.get(name)?.[0] ?? null;
  const oneOf = <T extends string>(name: keyof typeof enumerated, known: readonly T[]): T | null => {
    const value = one(name);
    const found = known.find((each) => each === value) ?? null;
    if (value !== null && found === null)
      problems.push({ ...badParameter(name, known.join(", "), value), asked: ["household", ...enumerated[name]] });
    return found;
  };
  const each = <T>(name: Listed, expected: string, read: (value: string) => T | null): readonly T[] =>
    (query.get(name) ?? []).flatMap((value, at) => {
      const found = read(value);
      if (found === null)
        problems.push({ ...badParameter(name, expected, value), asked: ["household", ...listed[name], at] });
      return found === null ? [] : [found];
    });
  const eaters = each("eaters", "a number of people, x, and a share of a serving, such as 2x1/2", readEaters);
  const household: GivenHousehold = {
    region: one("region"),
    currency: one("currency"),
    measures: oneOf<MeasureSystem>("measures", measureSystems),
    locale: one("locale"),
    diets: query.get("diet") ?? [],
    avoidAllergens: query.get("avoid-allergen") ?? [],
    dislikes: query.get("dislike") ?? [],
    eaters: eaters.length === 0 ? null : eaters,
    swaps: each("swap", "two slugs with a colon between them, such as bulgur:buckwheat-groats", (value) => {
      const [from, to] = halves(value);
      return from === null ? null : { from, to };
    }),
    routes: {
      mode: oneOf<RouteMode>("routes", routeModes),
      byName: each(
        "route",
        "a component and a route with a colon between them, such as boiled-lentils:tinned",
        (value) => {
          const [component, route] = halves(value);
          return component === null ? null : { component, route };
        },
      ),
    },
    onHand: each(
      "on-hand",
      "a food, a colon and an amount, such as carrot:500 g;use-by=2026-03-04 or carrot:half a bag",
      readOnHand,
    ),
    sessionStart: readStart(one("start"), one("zone"), problems),
    kitchen: readKitchen(one("cooks"), query.get("appliance") ?? [], problems),
  };
  return { household, problems };
}

/** A form sends an empty field where nothing was typed. */
function readKitchen(
  cooks: string | null,
  appliances: readonly string[],
  problems: Problem[],
): GivenHousehold["kitchen"] {
  const counts = appliances
    .filter((each) => each.trim() !== "")
    .flatMap((value, at) => {
      const [appliance, count] = halves(value);
      if (appliance !== null && /^\d{1,3}$/.test(count)) return [{ appliance, count: Number(count) }];
      problems.push({
        ...badParameter("appliance", "a code, a colon and a whole number, such as oven-shelf:1", value),
        asked: ["household", "kitchen", "appliances", at],
      });
      return [];
    });
  const hands = cooks === null || cooks.trim() === "" ? null : cooks.trim();
  if (hands !== null && !/^\d{1,3}$/.test(hands))
    problems.push({
      ...badParameter("cooks", "a whole number of cooks, such as 2", hands),
      asked: ["household", "kitchen", "cooks"],
    });
  if (hands === null && counts.length === 0) return null;
  return { cooks: hands !== null && /^\d{1,3}$/.test(hands) ? Number(hands) : null, appliances: counts };
}

type Halves = readonly [string, string] | readonly [null, null];

function halves(value: string): Halves {
  const at = value.indexOf(":");
  const [before, after] = [value.slice(0, at).trim(), value.slice(at + 1).trim()];
  return at < 1 || before === "" || after === "" ? [null, null] : [before, after];
}

function readEaters(value: string): { readonly count: number; readonly portion: string } | null {
  const [, count, portion] = /^(\d{1,7})\s*x\s*(\S.*)$/.exec(value) ?? [];
  return count === undefined || portion === undefined ? null : { count: Number(count), portion };
}

function readOnHand(value: string): GivenOnHand | null {
  const [what = "", ...notes] = value.split(";").map((part) => part.trim());
  const [name, amount] = halves(what);
  if (name === null) return null;
  const useBy = notes.find((note) => note.startsWith("use-by="))?.slice("use-by=".length) ?? null;
  if (useBy !== null && !isDay(useBy)) return null;
  const unknown = notes.filter((note) => note !== "as-other-form" && !note.startsWith("use-by="));
  if (unknown.length > 0) return null;
  const item = name.startsWith("component/") ? { component: name.slice("component/".length) } : { food: name };
  return { ...item, amount, useBy, asOtherForm: notes.includes("as-other-form") };
}

const isDay = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/.test(text) && new Date(`${text}T00:00:00Z`).toJSON()?.startsWith(text) === true;

function readStart(start: string | null, zone: string | null, problems: Problem[]): GivenHousehold["sessionStart"] {
  if (start === null && zone === null) return null;
  const wrong = (name: "start" | "zone", expected: string, got: string): null => {
    const asked = ["household", "sessionStart", name === "zone" ? "zone" : "local"];
    problems.push({ ...badParameter(name, expected, got), asked });
    return null;
  };
  if (start === null) return wrong("start", "a date and time beside `zone`, such as 2026-03-01T10:00", "nothing");
  if (zone === null)
    return wrong("zone", "the IANA name of a time zone beside `start`, such as Europe/Lisbon", "nothing");
  if (!/(Z|[+-]\d{2}:\d{2})$/.test(start)) return { local: start, zone };
  const instant = new Date(start);
  const fits =
    /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}/.test(start) && isDay(start.slice(0, 10)) && !Number.isNaN(instant.getTime());
  if (fits) return { instant: instant.toISOString(), zone };
  return wrong("start", "a date and time, such as 2026-03-01T10:00 or 2026-03-01T09:00:00Z", start);
}

/** A problem of a household, with the place in the address where it was written. */
export const inAddress = (problem: Problem): Problem => ({
  ...problem,
  path: parameterPath(problem.path),
  asked: problem.asked ?? problem.path,
});

function parameterPath(path: Path): Path {
  const [first, second, ...rest] = path;
  if (first !== "household" || second === undefined) return path;
  if (second === "kitchen") return rest[0] === "cooks" ? ["cooks"] : ["appliance", ...rest.slice(1, 2)];
  if (second === "sessionStart" || second === "session") return rest[0] === "zone" ? ["zone"] : ["start"];
  if (second === "routes") return ["route", ...rest.filter((part) => typeof part === "number")];
  return [namesInBody[second] ?? second, ...rest];
}
