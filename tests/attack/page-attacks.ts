import { rowNames } from "../../src/exports/page/form/row-fields.js";
import { around, get, listOf, post, times, type AttackRequest, type Target } from "./attack-request.js";

const formType: { readonly "content-type": string } = { "content-type": "application/x-www-form-urlencoded" };

const [people, share] = rowNames.eaters;
const [have, howMuch] = rowNames.onHand;

/** Pages that take a form in a body, after the address of their plan. */
const pages = ["", "/list", "/cook", "/fridge-door", "/labels"];

const form = (pairs: readonly (readonly [string, string])[]): string =>
  pairs.map(([name, value]) => `${encodeURIComponent(name)}=${encodeURIComponent(value)}`).join("&");

/** Forms as large as they are taken. One with a diet is computed at once, one without leads to an address. */
function forms({ foods, plans, publisher }: Target): Readonly<Record<string, string>> {
  const diet = form([["diet", "gluten-free"]]);
  const rows = (names: readonly [string, string], of: (at: number) => readonly [string, string]): string =>
    form(
      listOf(201, (at) => of(at)).flatMap(([a, b], at) => [
        [`${names[0]}-${String(at + 1)}`, a] as const,
        [`${names[1]}-${String(at + 1)}`, b] as const,
      ]),
    );
  const others = form(listOf(50, (at) => ["plan", `${publisher}/${around(plans, at)}:${String(at + 1)}`] as const));
  const swaps = form(listOf(200, (at) => ["swap", `${around(foods, at)}:${around(foods, at + 1)}`] as const));
  return {
    "a diet": `${diet}&servings=200&routes=CHEAPEST`,
    "200 things in the house": `${diet}&servings=37&${rows([have, howMuch], (at) => [around(foods, at), `${String(at + 1)} g`])}`,
    "200 groups of eaters": `${diet}&servings=200&${rows([people, share], () => ["1", "1/3"])}`,
    "200 swaps and routes": `${diet}&servings=8&routes=LEAST_WORK&${swaps}`,
    "200 diets": `servings=4&${form(listOf(200, (at) => ["diet", `diet-${String(at)}`] as const))}`,
    "what nobody eats": `servings=4&avoid-allergens-typed=${"milk,".repeat(9_000)}&dislikes-typed=${"z,".repeat(5_000)}`,
    "fifty other plans": `${diet}&servings=40&${others}`,
    "fifty other plans and no diet": `servings=40&${others}`,
    "a city of nowhere": `${diet}&start=2026-03-01T10:00&zone=${"a/".repeat(20_000)}`,
    "a zone of letters that are no letters": `${diet}&start=${"9".repeat(20_000)}&zone=${"%F0%9F%A5%95".repeat(3_000)}`,
    "pairs without end": times(20_000, (at) => `a${String(at % 10)}`, "&"),
    "signs of percent": "%".repeat(60_000),
    zeros: `${diet}&servings=${"0".repeat(60_000)}`,
    nothing: "",
    "more than is taken": `${diet}&${"x".repeat(70_000)}`,
  };
}

/** Forms that are sent to pages and to previews of nobody, and pages to cook from. */
export function pageAttacks(target: Target): readonly AttackRequest[] {
  const { publisher, plans, foods } = target;
  const slug = around(plans, 0);
  const sent = pages.flatMap((page) =>
    Object.entries(forms(target)).map(([name, body]) =>
      post(`a form of ${name} sent to ${page || "a plan"}`, `/p/${publisher}/${slug}${page}`, body, formType),
    ),
  );
  const types = [
    "application/json",
    "text/plain",
    "multipart/form-data; boundary=a",
    "application/x-www-form-urlencoded; charset=utf-16",
  ];
  const mistyped = types.map((type) =>
    post(`a form as ${type}`, `/p/${publisher}/${slug}`, "diet=vegan", { "content-type": type }),
  );
  const others = times(50, (at) => `plan=${publisher}/${around(plans, at)}:${String(at + 1)}`, "&");
  const onHand = times(60, (at) => `on-hand=${around(foods, at)}:${String(at)}%20g`, "&");
  const read = pages.flatMap((page) =>
    [
      "servings=200&cooks=20",
      `servings=200&${others}`,
      `servings=37&routes=LEAST_WORK&${onHand}`,
      "servings=1000000",
      "locale=pl&region=DE&servings=1",
    ].map((query) =>
      get(`${page || "a plan"} for many`, `/p/${publisher}/${around(plans, 1)}${page}?${query}`, {
        accept: "text/html",
      }),
    ),
  );
  const spoken = plans.flatMap((each) =>
    ["de", "fr", "es", "pl", `${"pl;q=0.1,".repeat(1_500)}de`].map((language) =>
      get("a page in another language", `/p/${publisher}/${each}`, {
        accept: "text/html",
        "accept-language": language,
      }),
    ),
  );
  const previewed = Object.entries(forms(target)).map(([name, body]) =>
    post(
      `a form of ${name} sent to a preview of nobody`,
      `/preview/${publisher}/${slug}/${"x".repeat(40)}`,
      body,
      formType,
    ),
  );
  const walked = ["/sitemap.xml", "/sitemap/plans.xml", "/robots.txt", "/privacy"].flatMap((path) =>
    ["", `?after=${"a".repeat(6_000)}`, "?after=%00", `?after=${"%F0%9F%A5%95".repeat(400)}`].map((query) =>
      get("what lists all pages", path + query, { host: "a.example" }),
    ),
  );
  return [...sent, ...mistyped, ...read, ...spoken, ...previewed, ...walked];
}
