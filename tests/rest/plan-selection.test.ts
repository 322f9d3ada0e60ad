import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../kit/databases.js";
import { demoSlugs, openRest, planOf, type RestApp } from "./open-rest.js";

type Node = Readonly<Record<string, unknown>>;

const parts = [
  ...["meals", "components", "shoppingList", "session", "sessions", "storage", "allergens", "diets", "nutrition"],
  ...["cautions", "meals.allergens", "meals.diets", "meals.nutrition"],
];

/** What a reference of a brief plan stands for, put back, so that it can be compared with the whole one. */
function restored(brief: Node, whole: unknown, path = ""): void {
  const { names, sources } = brief as { names: Record<string, string>; sources: unknown[] };
  const check = (short: unknown, long: unknown, at: string): void => {
    if (Array.isArray(short)) {
      expect(short.length, at).toBe((long as unknown[]).length);
      short.forEach((each, index) => check(each, (long as unknown[])[index], `${at}.${String(index)}`));
      return;
    }
    const full = long as Node | null;
    if (typeof full !== "object" || full === null) return expect(short, at).toEqual(long);
    if ("kind" in full && "slug" in full && "name" in full && typeof short === "string") {
      const prefix = { FOOD: "", COMPONENT: "component/", MEAL: "meal/" }[String(full["kind"])];
      expect([short, names[short]], at).toEqual([`${String(prefix)}${String(full["slug"])}`, full["name"]]);
    } else if ("dimension" in full) expect(short, at).toBe(full["code"]);
    else if (typeof short === "number") expect(sources[short], at).toEqual(full);
    else for (const [name, member] of Object.entries(short as Node)) check(member, full[name], `${at}.${name}`);
  };
  const { names: _names, sources: _sources, ...rest } = brief;
  check(rest, whole, path);
}

describeOnBothDatabases("parts of a plan over REST", (open) => {
  let app: RestApp;
  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  const size = (text: string): number => Buffer.byteLength(text);

  it("are at most 60 kB each, and meals, components and the list together; nothing in them differs from the whole", async () => {
    for (const slug of demoSlugs) {
      const whole = await app.get(planOf(slug));
      for (const include of [...parts, "meals,components,shoppingList"]) {
        const { status, text, body, headers } = await app.get(`${planOf(slug)}?include=${include}`);
        expect([status, headers["content-type"]]).toEqual([200, "application/vnd.prepwright.brief+json"]);
        expect(size(text), `${slug} ${include}`).toBeLessThanOrEqual(60_000);
        expect(body.title).toBe(whole.body.title);
        restored(body as Node, whole.body);
      }
    }
  });

  it("hold what is named, for the household of the address, and leave the rest out", async () => {
    const { body } = await app.get(
      `${planOf("bean-night")}?fields=title,meals.title,shoppingList.lines.toTake&servings=6`,
    );
    expect(Object.keys(body).toSorted()).toEqual(["meals", "names", "shoppingList", "sources", "title"]);
    expect(Object.keys(body.meals[0])).toEqual(["title"]);
    const whole = await app.get(`${planOf("bean-night")}?servings=6`);
    const taken = (of: typeof whole): unknown =>
      of.body.shoppingList.lines.map(({ toTake }: { toTake: string }) => toTake);
    expect(body.shoppingList.lines.map(({ toTake }: { toTake?: string }) => toTake ?? null)).toEqual(taken(whole));
  });

  it("say of every allergen of a meal what the whole plan says, unknown ones too", async () => {
    const { body } = await app.get(`${planOf("bean-night")}?include=meals.allergens`);
    const whole = await app.get(planOf("bean-night"));
    for (const [at, meal] of whole.body.meals.entries()) {
      const findings = body.meals[at].allergens.findings as { code: string; presence: string; unknown: string[] }[];
      expect(findings.map(({ code, presence, unknown }) => [code, presence, unknown])).toEqual(
        meal.allergens.findings.map((each: { code: string; presence: string; unknown: { slug: string }[] }) => [
          ...[each.code, each.presence],
          each.unknown.map(({ slug }) => slug),
        ]),
      );
    }
  });

  it.each([
    ["include=shopingList", "shoppingList"],
    ["include=meals,meals.allergen", "meals.allergens"],
    ["fields=titel", "title"],
    ["fields=meals.titles", "meals.title"],
    ["fields=constructor", "one of"],
    ["fields=title.length", "no members"],
    [`fields=${"a,".repeat(300)}`, "at most 200 names"],
    [`fields=${"meals.".repeat(300)}title`, "one of"],
  ])("refuse what is no name, and name what is near (%#)", async (query, named) => {
    const { status, body } = await app.get(`${planOf("bean-night")}?${query}`);
    expect(status).toBe(400);
    expect(JSON.stringify(body.problems)).toContain(named);
  });

  it("are refused together with what else is wrong in the address", async () => {
    const { status, body } = await app.get(`${planOf("bean-night")}?include=shopingList&servings=x&diet=vegn`);
    const paths = (body.problems as { path: string[] }[]).map(({ path }) => path[0]);
    expect([status, paths]).toEqual([400, ["include", "servings", "diet"]]);
  });

  it("are of JSON alone", async () => {
    expect((await app.get(`${planOf("bean-night")}.md?include=meals`)).status).toBe(400);
  });

  it("leave the whole plan as it was", async () => {
    const { headers, body } = await app.get(planOf("bean-night"));
    expect(headers["content-type"]).toBe("application/json; charset=utf-8");
    expect(body.meals[0].allergens.findings[0].unknown[0] ?? { kind: "FOOD" }).toMatchObject({ kind: "FOOD" });
  });
});
