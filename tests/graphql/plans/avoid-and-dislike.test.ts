import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const publisher = "third-gate-allotments";
const slug = "lentils-and-greens";
const plan = `/v1/plans/${publisher}/${slug}`;

interface Wishes {
  readonly avoidAllergens?: readonly string[];
  readonly dislikes?: readonly string[];
  readonly locale?: string;
  readonly [more: string]: unknown;
}
interface Said {
  readonly code: string;
  readonly title: string;
  readonly text: string;
  readonly parameters: readonly { readonly name: string; readonly values: readonly string[] }[];
}
interface Fault {
  readonly code: string;
  readonly where: string;
  readonly text: string;
}
interface Answer {
  readonly foods: readonly string[];
  readonly routes: readonly string[];
  readonly warnings: readonly Said[];
  readonly problems: readonly Fault[];
  /** Warnings of the list. */
  readonly onList: readonly string[];
}

describeOnBothDatabases("what a household avoids and does not like", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
  });
  afterAll(() => app.close());

  const graphql = async (household: Wishes, servings = 3): Promise<Answer> => {
    const { data, errors } = await app.ask(
      `query ($h: HouseholdInput, $servings: Int) {
        plan(publisher: "${publisher}", slug: "${slug}") { scaling(servings: $servings, household: $h) {
          scaled {
            components { route { name } }
            warnings { code title text parameters { name values } }
            shoppingList { lines { food { slug } } warnings { code } }
          }
          problems { code where text }
        } } }`,
      { h: household, servings },
    );
    expect(errors).toEqual([]);
    const { scaled, problems } = (data?.["plan"] as { readonly scaling: unknown }).scaling as {
      readonly scaled: {
        readonly components: readonly { readonly route: { readonly name: string } | null }[];
        readonly warnings: readonly Said[];
        readonly shoppingList: {
          readonly lines: readonly { readonly food: { readonly slug: string } }[];
          readonly warnings: readonly { readonly code: string }[];
        };
      } | null;
      readonly problems: readonly Fault[];
    };
    const isOfWishes = ({ code }: { readonly code: string }): boolean => /^(ALLERGEN|DISLIKE)_/.test(code);
    return {
      foods: (scaled?.shoppingList.lines ?? []).map(({ food }) => food.slug).toSorted(),
      routes: (scaled?.components ?? []).flatMap(({ route }) => route?.name ?? []),
      warnings: (scaled?.warnings ?? []).filter(isOfWishes),
      problems,
      onList: (scaled?.shoppingList.warnings ?? []).filter(isOfWishes).map(({ code }) => code),
    };
  };
  const parameter = ({ parameters }: Said, name: string): readonly string[] =>
    parameters.find((each) => each.name === name)?.values ?? [];
  const allergensIn = ({ warnings }: Answer, item: string): readonly string[] =>
    warnings
      .filter((each) => each.code === "ALLERGEN_NOT_AVOIDED" && parameter(each, "item")[0] === item)
      .map((each) => `${parameter(each, "allergen")[0]} ${parameter(each, "presence")[0]}`);
  const address = ({ avoidAllergens = [], dislikes = [], ...rest }: Wishes, names: readonly [string, string]) => {
    const query = new URLSearchParams({ servings: "3" });
    for (const each of avoidAllergens) query.append(names[0], each);
    for (const each of dislikes) query.append(names[1], each);
    for (const [key, value] of Object.entries(rest)) query.append(key, String(value));
    return query.toString();
  };
  const get = (address: string) => request(app.app.server).get(address);
  const shoppingFor = (household: Wishes) =>
    request(app.app.server)
      .post("/v1/shopping-list")
      .send({ plans: [{ publisher, slug, servings: 3 }], household });
  const ofAddresses = ["avoid-allergen", "dislike"] as const;
  const ofBodies = ["avoidAllergens", "dislikes"] as const;

  it("takes the swap that is known to be without the allergen, whatever that is called, a member by its group too", async () => {
    expect((await graphql({})).foods).toContain("walnuts");
    const ways: readonly Wishes[] = [
      { avoidAllergens: ["walnut"] },
      { avoidAllergens: ["tree-nut"] },
      { avoidAllergens: ["Walnüsse"], locale: "de" },
      { avoidAllergens: ["fruits à coque"], locale: "en" },
      { avoidAllergens: ["orzechy włoskie"] },
      { avoidAllergens: ["ORZECHY WLOSKIE"] },
      { avoidAllergens: ["nueces"] },
    ];
    for (const household of ways) {
      const answer = await graphql(household);
      expect([household, answer.problems]).toEqual([household, []]);
      expect(answer.foods).toContain("sunflower-seeds");
      expect(answer.foods).not.toContain("walnuts");
      expect(allergensIn(answer, "walnuts")).toEqual([]);
    }
  });

  it("warns of what contains it, and of what nobody knows, on the plan and on the list", async () => {
    const milk = await graphql({ avoidAllergens: ["milk"] });
    expect(allergensIn(milk, "yoghurt")).toEqual(["milk CONTAINS"]);
    expect(allergensIn(milk, "butter")).toContain("milk CONTAINS");
    // Bread of no certain recipe: nobody knows.
    expect(allergensIn(await graphql({ avoidAllergens: ["sesame"] }), "wholemeal-bread")).toEqual(["sesame UNKNOWN"]);
    expect(milk.onList).toContain("ALLERGEN_NOT_AVOIDED");
    const said = milk.warnings.map(({ text, title }) => `${title}: ${text}`).join("\n");
    expect(said).toContain("milk");
    expect(said).not.toMatch(/free from|milk-free/i);
  });

  it("leaves out an optional food that nobody likes, in words of the reader and with the meal's title", async () => {
    const before = await graphql({});
    const after = await graphql({ dislikes: ["Dill"], locale: "de" });
    expect(before.foods).toContain("dill");
    expect(after.foods).toEqual(before.foods.filter((food) => food !== "dill"));
    expect(after.warnings).toMatchObject([{ code: "DISLIKE_LEFT_OUT" }]);
    expect(after.warnings[0]?.text).toMatch(/Dill.*weggelassen/);
    expect(after.warnings[0]?.text).not.toContain("cabbage-and-potatoes");
    expect(after.onList).toEqual(["DISLIKE_LEFT_OUT"]);
  });

  it("takes the swap, or the route, that is without it, and keeps the route that is asked for by name", async () => {
    const nuts = await graphql({ dislikes: ["walnuts"] });
    expect([nuts.foods.includes("walnuts"), nuts.foods.includes("sunflower-seeds")]).toEqual([false, true]);
    expect(nuts.warnings).toEqual([]);
    const pulses = await graphql({ dislikes: ["brown-lentils"] });
    expect(pulses.routes).toContain("tinned");
    expect(pulses.foods).not.toContain("brown-lentils");
    const written = { component: "boiled-lentils", route: "as-written" };
    const named = await graphql({ dislikes: ["brown-lentils"], routes: { byName: [written] } });
    expect(named.routes).not.toContain("tinned");
    expect(named.warnings.map(({ code }) => code)).toEqual(["DISLIKE_NOT_AVOIDED"]);
    const wished = { dislikes: ["sunflower-seeds"], swaps: [{ from: "walnuts", to: "sunflower-seeds" }] };
    expect((await graphql(wished)).foods).toContain("sunflower-seeds");
  });

  it("names the meals that it stays in, by title", async () => {
    const { warnings, foods } = await graphql({ dislikes: ["red-cabbage"] });
    expect(foods).toContain("red-cabbage");
    expect(warnings).toMatchObject([{ code: "DISLIKE_NOT_AVOIDED" }]);
    expect(warnings[0]?.parameters).toContainEqual({
      name: "meals",
      values: ["spread-on-toast", "cabbage-and-potatoes"],
    });
    expect(warnings[0]?.text).toContain("Red cabbage with boiled potatoes");
  });

  it("does not mind a food that this plan does not take, nor anything said twice", async () => {
    expect(await graphql({ dislikes: ["honey"] })).toEqual(await graphql({}));
    const once = { avoidAllergens: ["milk"], dislikes: ["dill"] };
    const twice = { avoidAllergens: ["milk", "Milch", "lait", "milk"], dislikes: ["dill", "Dill", "dill"] };
    expect(await graphql(twice)).toEqual(await graphql(once));
  });

  it.each([
    [{ avoidAllergens: ["milkk"] }, "UNKNOWN_CODE", "household.avoidAllergens.0", "milk"],
    [{ avoidAllergens: ["milk", "selery"] }, "UNKNOWN_CODE", "household.avoidAllergens.1", "celery"],
    [{ avoidAllergens: ["Selerie"], locale: "de" }, "UNKNOWN_CODE", "household.avoidAllergens.0", "Sellerie"],
    [{ avoidAllergens: ["nuts"] }, "UNKNOWN_CODE", "household.avoidAllergens.0", "peanut"],
    [{ avoidAllergens: ["orzeszki"], locale: "pl" }, "UNKNOWN_CODE", "household.avoidAllergens.0", "orzeszki ziemne"],
    [{ avoidAllergens: ["Meeresfrüchte"], locale: "de" }, "UNKNOWN_CODE", "household.avoidAllergens.0", "Weichtiere"],
    [{ avoidAllergens: ["\0"] }, "UNKNOWN_CODE", "household.avoidAllergens.0", ""],
    [{ avoidAllergens: ["constructor"] }, "UNKNOWN_CODE", "household.avoidAllergens.0", ""],
    [{ dislikes: ["carot"] }, "UNKNOWN_FOOD", "household.dislikes.0", "carrot"],
    [{ dislikes: ["dill", "Karoten"], locale: "de" }, "UNKNOWN_FOOD", "household.dislikes.1", "Karotten"],
    [{ dislikes: ["\0"] }, "UNKNOWN_FOOD", "household.dislikes.0", ""],
  ] as const)("refuses %o alike over every door, with what is near it", async (household, code, where, near) => {
    const { problems, foods } = await graphql(household);
    expect(foods).toEqual([]);
    expect(problems).toMatchObject([{ code, where }]);
    expect(problems[0]?.text).toContain(near);
    for (const names of [ofAddresses, ofBodies]) {
      const { status, body } = await get(`${plan}?${address(household, names)}`);
      expect([status, body.problems[0].code, body.problems[0].where]).toEqual([400, code, where]);
    }
    const posted = await shoppingFor(household);
    expect([posted.status, posted.body.problems[0].code]).toEqual([422, code]);
  });

  it("is the same by both names of an address and in a body", async () => {
    const household = { avoidAllergens: ["Walnüsse", "milk"], dislikes: ["Dill", "bay-leaf"], locale: "de" };
    const [one, other] = [
      await get(`${plan}?${address(household, ofAddresses)}`),
      await get(`${plan}?${address(household, ofBodies)}`),
    ];
    expect([one.status, other.status]).toEqual([200, 200]);
    expect(other.text).toBe(one.text);
    const posted = await shoppingFor(household);
    const listed = await get(`${plan}/list?${address(household, ofAddresses)}`);
    expect([posted.status, listed.status]).toEqual([200, 200]);
    const foodsOf = (text: string): readonly string[] =>
      ["walnuts", "sunflower-seeds", "dill", "bay-leaf"].filter((food) => text.includes(`"${food}"`));
    expect(foodsOf(posted.text)).toEqual(foodsOf(listed.text));
    const { foods } = await graphql(household);
    expect([foods.includes("walnuts"), foods.includes("dill"), foods.includes("sunflower-seeds")]).toEqual([
      false,
      false,
      true,
    ]);
  });

  it("stands in the form of the page, and in no address of it", async () => {
    const path = `/p/${publisher}/${slug}`;
    const typed = new URLSearchParams({
      servings: "3",
      locale: "de",
      "avoid-allergens-typed": "Milch, Sellerie",
      "dislikes-typed": "Dill; Lorbeer-Irrtum",
    });
    const send = (body: URLSearchParams) =>
      request(app.app.server).post(path).set("host", "plans.example").type("form").send(body.toString());
    const wrong = await send(typed);
    expect(wrong.status).toBeLessThan(500);
    expect(wrong.text).toContain("Lorbeer-Irrtum");
    expect(wrong.text).toMatch(/id="fault-dislikes"/);
    typed.set("dislikes-typed", "Dill");
    const page = await send(typed);
    expect([page.status, page.headers["cache-control"]]).toEqual([200, expect.stringContaining("no-store")]);
    expect(page.text).toContain("meidet: Milch, Sellerie");
    expect(page.text).toContain('value="Milch, Sellerie"');
    expect(page.text).toContain("weggelassen");
    const links = [...page.text.matchAll(/(?:href|action|content)="([^"]*)"/g)].map(([, to = ""]) =>
      decodeURIComponent(to),
    );
    expect(links.filter((to) => /Milch|milk|Sellerie|Dill|avoid|dislike/i.test(to))).toEqual([]);
    expect(page.text).not.toContain("application/ld+json");
  });
});
