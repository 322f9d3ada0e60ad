import { regionCode } from "../domain/model/region-codes.js";
import { zoneOfCity } from "../domain/quantity/naming/zones-of-cities.js";
import { formFields, textsOfSeveral } from "../exports/page/form/plan-form.js";
import { rowNames } from "../exports/page/form/row-fields.js";
import { longestHouseholdList } from "../services/answers/read-household.js";
import { isPrivate, sharedQuery } from "../exports/page/ask.js";
import { queryOf, type Query } from "./parameter.js";
import { readPlanForm } from "./read-plan-form.js";

/** The most rows of a form that are read. A household of more is refused all the same. */
const mostRows = longestHouseholdList + 1;

/**
 * A form of the pages that was sent in a body. One without what is private leads to the address that asks the same; one with it is answered at once,
 * and stands in no address, no cache and no history.
 */
export function readSentForm({ body, url }: { readonly body: unknown; readonly url: string }): {
  readonly query: Query;
  readonly address: string | null;
} {
  const query = queryOfForm(typeof body === "string" ? body : "");
  const { form } = readPlanForm(query);
  if (isPrivate(form)) return { query, address: null };
  const asked = sharedQuery(form);
  const plans = (query.get("plan") ?? []).map((plan) => `plan=${encodeURIComponent(plan)}`).join("&");
  const more = plans === "" ? "" : `${asked === "" ? "?" : "&"}${plans}`;
  return { query, address: (url.split("?")[0] ?? "/") + asked + more };
}

/**
 * What a form of the pages sent, as the query that asks the same: rows of two fields become one value each, a city becomes its zone. Names
 * that the form does not have are passed over.
 */
function queryOfForm(body: string): Query {
  const sent = new URLSearchParams(body);
  const zone = zoneOf(sent);
  return queryOf([
    ...[...sent].filter(([name]) => known.has(name) && name !== formFields.zone),
    ...sent.getAll("plan").map((plan) => ["plan", plan] as const),
    ...rowsOf(sent, rowNames.onHand).flatMap(([thing, amount]) =>
      thing === "" ? [] : [[formFields.onHand, `${thing}:${amount}`] as const],
    ),
    ...Object.entries(textsOfSeveral).flatMap(([name, field]) =>
      sent.getAll(name).flatMap((text) => severalOf(text).map((each) => [formFields[field], each] as const)),
    ),
    ...eatersOf(sent).map((group) => [formFields.eaters, group] as const),
    ...(zone === null ? [] : [[formFields.zone, zone] as const]),
  ]);
}

const severalOf = (text: string): readonly string[] =>
  text
    .split(/[,;\n]/u, mostRows)
    .map((each) => each.trim())
    .filter((each) => each !== "");

const known: ReadonlySet<string> = new Set(Object.values(formFields));

function rowsOf(sent: URLSearchParams, names: readonly [string, string]): readonly (readonly [string, string])[] {
  const rows: (readonly [string, string])[] = [];
  for (let at = 1; at <= mostRows && sent.has(`${names[0]}-${at}`); at += 1) {
    rows.push([sent.get(`${names[0]}-${at}`)?.trim() ?? "", sent.get(`${names[1]}-${at}`)?.trim() ?? ""]);
  }
  return rows;
}

/** Groups as they were given, and the people who are left: they eat a whole serving each. */
function eatersOf(sent: URLSearchParams): readonly string[] {
  const groups = rowsOf(sent, rowNames.eaters).filter(([people]) => people !== "");
  if (groups.length === 0) return [];
  const servings = Number(sent.get(formFields.servings)?.trim() || sent.get("written-for"));
  const left = servings - groups.reduce((sum, [people]) => sum + Number(people), 0);
  const rest = Number.isInteger(left) && left > 0 ? [`${left}x1`] : [];
  return [...groups.map(([people, share]) => `${people}x${share}`), ...rest];
}

/** The zone of the city that was typed, or the text itself where nobody knows it; without a start there is none. */
function zoneOf(sent: URLSearchParams): string | null {
  const start = sent.get(formFields.start)?.trim() ?? "";
  if (start === "") return null;
  const city = sent.get(formFields.zone)?.trim() ?? "";
  const before = sent.get("zone-before")?.trim() ?? "";
  // The field shows the city of the zone that stood there.
  if (before !== "" && city !== "" && before.replaceAll("_", " ").endsWith(city)) return before;
  const region = regionCode(sent.get(formFields.region)?.trim() ?? "");
  return zoneOfCity(city, region) ?? (city === "" ? null : city);
}
