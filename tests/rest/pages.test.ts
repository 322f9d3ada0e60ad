import request from "supertest";
import { beforeAll, expect, it } from "vitest";
import { degreeText } from "../../src/exports/words/degree-text.js";
import { publishPlan } from "../../src/services/plans/publish-plan.js";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, demoBundle, openTestApp, renamed, rules, type TestApp } from "../graphql/open-test-app.js";
import { attributeOf, byId, elementsOf, markupFaults, parseErrors, textOf, type Element } from "../kit/html-page.js";
import { describeOnBothDatabases } from "../kit/databases.js";

const path = "/p/third-gate-allotments/roots-and-barley";
const household = "servings=7&region=XA&currency=XTS&start=2026-03-01T10:00&zone=Europe/Lisbon";

describeOnBothDatabases("pages", (open) => {
  let test: TestApp;
  const get = (address: string) => request(test.app.server).get(address);

  beforeAll(async () => {
    const { data } = await open();
    test = await openTestApp(data);
    await loadSeeds(test.deps, demo);
  });

  const addresses = [
    "/",
    "/p/third-gate-allotments",
    path,
    `${path}?${household}`,
    `${path}?servings=none&region=Atlantis`,
  ];

  it.each(addresses)("answers %s as valid HTML", async (address) => {
    const { text, type } = await get(address);
    expect(type).toBe("text/html");
    expect(parseErrors(text)).toEqual([]);
    expect(await markupFaults(text)).toEqual([]);
  });

  it.each([...addresses, "/p/nobody", `${path}-not`])(
    "sends %s with headers that allow nothing else in",
    async (address) => {
      const { headers, text } = await get(address);
      expect(headers["content-security-policy"]).toMatch(/^default-src 'none'; style-src 'self'; /);
      expect(headers["content-security-policy"]).not.toContain("unsafe");
      expect(headers).toMatchObject({ "x-content-type-options": "nosniff", "referrer-policy": "no-referrer" });
      const inline = elementsOf(text).filter(
        (element) =>
          element.tagName === "style" ||
          // Data for programs is no script: browsers run nothing of this type.
          (element.tagName === "script" && attributeOf(element, "type") !== "application/ld+json") ||
          element.attrs.some(({ name }) => name === "style" || name.startsWith("on")),
      );
      expect(inline).toEqual([]);
      // Whatever it loads comes from the service itself.
      const loaded = elementsOf(text).flatMap((element) =>
        ["link", "img", "script", "iframe", "source"].includes(element.tagName) &&
        !["canonical", "alternate"].includes(attributeOf(element, "rel") ?? "") &&
        attributeOf(element, "type") !== "application/ld+json"
          ? [attributeOf(element, "href") ?? attributeOf(element, "src") ?? ""]
          : [],
      );
      expect(loaded.filter((each) => !each.startsWith("/p-assets/"))).toEqual(["/favicon.svg"]);
    },
  );

  it("names the plans in print on the front page and on the publisher's", async () => {
    for (const address of ["/", "/p/third-gate-allotments"]) {
      const links = elementsOf((await get(address)).text).map((element) => attributeOf(element, "href"));
      expect(links).toEqual(
        expect.arrayContaining(
          ["roots-and-barley", "bean-night", "lentils-and-greens", "eggs-and-oats"].map(
            (slug) => `/p/third-gate-allotments/${slug}`,
          ),
        ),
      );
    }
  });

  it("shows the figures that the API answers", async () => {
    const { data } = await test.ask(`{
      plan(publisher: "third-gate-allotments", slug: "roots-and-barley") {
        scaled(servings: 7, household: {
          region: "XA", currency: "XTS", sessionStart: { local: "2026-03-01T10:00", zone: "Europe/Lisbon" }
        }) {
          components { component { title } made { text } leftOver { text value } }
          shoppingList { cost { atTill { amount currency } perServing { amount } } }
          session { tasks { startsAt text } }
          cautions { text source { title } }
          allergens { findings { name presence } }
        }
      }
    }`);
    const scaled = (data?.["plan"] as { scaled: Scaled }).scaled;
    const { text } = await get(`${path}?${household}`);
    const made = textOf(byId(text, "made"));
    for (const { component, made: amount, leftOver } of scaled.components) {
      expect(made).toContain(component.title);
      expect(made).toContain(amount.text);
      if (leftOver.value > 0) expect(made).toContain(leftOver.text);
    }
    const { atTill, perServing } = scaled.shoppingList.cost;
    expect(textOf(byId(text, "cost"))).toContain(`${atTill.amount} ${atTill.currency}`);
    expect(textOf(byId(text, "cost"))).toContain(perServing.amount);
    const session = textOf(byId(text, "session"));
    for (const task of scaled.session.tasks) {
      expect(session).toContain(task.text);
      expect(session).toContain(task.startsAt.slice(11, 16));
    }
    // Byte for byte: a caution is never worded anew.
    const care = elementsOf(text).map(textOf);
    for (const caution of scaled.cautions) {
      expect(care).toContain(caution.text);
      expect(textOf(byId(text, "care"))).toContain(degreeText(caution.source.title));
    }
    const allergens = textOf(byId(text, "allergens"));
    for (const { name, presence } of scaled.allergens.findings) {
      expect(allergens, presence).toContain(name);
    }
  });

  it("draws every piece of work of the session and lists it in words", async () => {
    const { text } = await get(`/p/third-gate-allotments/bean-night?${household}`);
    const drawn = elementsOf(text).filter((element) => (attributeOf(element, "class") ?? "").endsWith("number"));
    const listed = elementsOf(text).find((element) => attributeOf(element, "class") === "work");
    const items = listed?.childNodes.filter((node) => node.nodeName === "li") ?? [];
    expect(items.length).toBeGreaterThan(5);
    expect(new Set(drawn.map(textOf))).toEqual(new Set(items.map((_item, at) => String(at + 1))));
    // Beans soak overnight.
    expect(textOf(byId(text, "session"))).toMatch(/the evening before/i);
    expect(textOf(byId(text, "bed-chart-0-evening"))).toMatch(/the evening before/i);
  });

  it("says beside the field what is wrong, and keeps everything that was typed", async () => {
    const typed = {
      servings: "a dozen",
      region: "Atlantis",
      currency: "shells",
      start: "2026-13-01T10:00",
      zone: "Mars/Olympus",
      diet: "vegan",
      measures: "METRIC_CUP",
    };
    const { status, text } = await get(`${path}?${new URLSearchParams(typed).toString()}`);
    expect(status).toBe(422);
    for (const field of ["servings", "region", "currency", "zone"] as const) {
      const input = byId(text, `f-${field}`);
      expect(input.tagName === "select" ? chosenIn(input) : attributeOf(input, "value")).toBe(typed[field]);
      expect(attributeOf(input, "aria-invalid")).toBe("true");
      const fault = byId(text, attributeOf(input, "aria-describedby") ?? "");
      expect(textOf(fault)).toContain(typed[field]);
    }
    expect(attributeOf(byId(text, "f-start"), "value")).toBe(typed.start);
    const chosen = elementsOf(text).filter((element) =>
      ["checked", "selected"].some((name) => attributeOf(element, name) === ""),
    );
    expect(chosen.map((element) => attributeOf(element, "value"))).toEqual(
      expect.arrayContaining(["vegan", "METRIC_CUP"]),
    );
    expect(text).not.toContain('id="meals"');
  });

  it.each([
    ["servings=0", "servings"],
    ["servings=-3", "servings"],
    ["servings=1e3", "servings"],
    ["servings=99999999", "servings"],
    ["measures=FURLONGS", "measures"],
    ["diet=moonlight", "diets"],
    ["swap=barley", "swaps"],
    ["route=boiled-lentils:stolen", "route"],
    ["start=2026-03-01T10:00", "zone"],
  ])("puts the fault of ?%s beside %s", async (query, field) => {
    const plan = query.startsWith("route") ? "/p/third-gate-allotments/lentils-and-greens" : path;
    const { status, text } = await get(`${plan}?${query}`);
    expect(status).toBe(422);
    expect(textOf(byId(text, `fault-${field}`))).not.toBe("");
  });

  it("takes a swap and a route that the form offers", async () => {
    const plain = (await get(path)).text;
    const options = elementsOf(plain).filter(({ tagName }) => tagName === "option");
    const swap = options.map((each) => attributeOf(each, "value")).find((value) => value?.startsWith("pearl-barley:"));
    expect(swap).toBe("pearl-barley:buckwheat-groats");
    const listed = (await get(`${path}/list?swap=${swap}`)).text;
    expect(textOf(byId(listed, "ticks"))).toContain("buckwheat");
    expect(textOf(byId(listed, "ticks"))).not.toContain("pearl barley");
    // A dish is named for what is in it, where it is cooked.
    const swapped = (await get(`${path}?swap=${swap}`)).text;
    expect(textOf(byId(swapped, "made-boiled-barley"))).toContain("with buckwheat groats in place of pearl barley");
    const lentils = "/p/third-gate-allotments/lentils-and-greens";
    const bought = (await get(`${lentils}/list?route=boiled-lentils:tinned`)).text;
    expect(textOf(byId(bought, "ticks"))).toMatch(/tinned|tin of/);
  });

  it("is not sent again while nothing changed", async () => {
    const ask = (address: string) => get(address).set("host", "plans.example");
    const first = await ask(path);
    const tag = first.headers["etag"] ?? "";
    expect(first.headers["cache-control"]).toBe("no-cache");
    const again = await ask(path).set("if-none-match", `"other", ${tag}`);
    expect([again.status, again.text]).toEqual([304, ""]);
    const other = await ask(`${path}?servings=5`).set("if-none-match", tag);
    expect(other.status).toBe(200);
  });

  it("answers what is not there as a page", async () => {
    for (const address of ["/p/nobody", "/p/nobody/nothing", `${path}-not`, `${path}?revision=99`, "/?after=rubbish"]) {
      const { status, type, text } = await get(address);
      expect([address, status, type]).toEqual([address, 404, "text/html"]);
      expect(parseErrors(text)).toEqual([]);
    }
  });

  it("links to the same answer in every other form, and each link answers", async () => {
    const { text } = await get(`${path}?${household}`);
    const links = [...text.matchAll(/href="(\/v1\/plans\/[^"]+)"/g)].map(([, found]) =>
      (found ?? "").replaceAll("&amp;", "&"),
    );
    const endings = links.map((each) => /\.(\w+)\?/.exec(each)?.[1]);
    expect(endings).toEqual(["md", "txt", "json", "csv", "ics"]);
    for (const each of links) expect([each, (await get(each)).status]).toEqual([each, 200]);
    // Without a start of the session there is no calendar to offer.
    expect((await get(path)).text).not.toContain(".ics");
  });

  it("says what a revision changed", async () => {
    const { app, deps } = test;
    const bundle = renamed(demoBundle("roots-and-barley"), "with-a-note");
    await publishPlan(deps, bundle);
    const changed = { ...bundle, plan: { ...bundle.plan, summary: "Shorter." } };
    const published = await publishPlan(deps, changed, "The summary is <shorter>.");
    expect(published.ok).toBe(true);
    const { text } = await request(app.server).get("/p/third-gate-allotments/with-a-note");
    expect(textOf(byId(text, "edition")!)).toContain("What this version changed: The summary is <shorter>.");
  });

  it("says that a revision was withdrawn", async () => {
    const bundle = renamed(demoBundle("roots-and-barley"), "withdrawn-plan");
    const at = new Date("2026-02-02T10:00:00Z");
    await test.deps.data.revisions.publish(bundle, at);
    await test.deps.data.revisions.withdraw(
      { publisher: bundle.plan.publisher, slug: "withdrawn-plan", revision: 1 },
      at,
      "The soak is too short.",
    );
    expect((await get("/p/third-gate-allotments/withdrawn-plan")).status).toBe(410);
    const old = await get("/p/third-gate-allotments/withdrawn-plan?revision=1");
    expect(old.status).toBe(200);
    expect(old.text).toContain("withdrew this version on 2 February 2026. The reason given: The soak is too short.");
  });

  it("puts several plans on one list, each for its own number of people", async () => {
    const address = `${path}/list?servings=7&region=XA&currency=XTS&plan=third-gate-allotments/bean-night:5`;
    const { status, text, headers } = await get(address);
    expect(status).toBe(200);
    expect(parseErrors(text)).toEqual([]);
    expect(await markupFaults(text)).toEqual([]);
    expect(headers["content-security-policy"]).toContain("script-src 'self'");
    const { data } = await test.ask(`{
      shoppingList(
        plans: [
          { publisher: "third-gate-allotments", slug: "roots-and-barley", servings: 7 }
          { publisher: "third-gate-allotments", slug: "bean-night", servings: 5 }
        ]
        household: { region: "XA", currency: "XTS" }
      ) { lines { food { slug } need { text } } cost { atTill { amount } } }
    }`);
    const list = data?.["shoppingList"] as {
      lines: readonly { food: { slug: string }; need: { text: string } | null }[];
      cost: { atTill: { amount: string } };
    };
    const boxes = elementsOf(text).filter((element) => attributeOf(element, "name") === "got");
    expect(boxes.map((box) => attributeOf(box, "value")).toSorted()).toEqual(
      list.lines.map(({ food }) => food.slug).toSorted(),
    );
    const shown = textOf(byId(text, "main"));
    for (const { need } of list.lines) if (need !== null) expect(shown).toContain(need.text);
    expect(shown).toContain(list.cost.atTill.amount);
    expect(shown).toContain("for 5");
  });

  it.each([
    ["plan=nobody/nothing", 404],
    ["plan=third-gate-allotments", 404],
    ["servings=lots", 422],
    ["plan=third-gate-allotments/bean-night:0", 422],
  ])("says what is wrong with a list: ?%s", async (query, status) => {
    const answer = await get(`${path}/list?${query}`);
    expect([answer.status, answer.type]).toEqual([status, "text/html"]);
    expect(parseErrors(answer.text)).toEqual([]);
  });

  it("gives other people's pages a plan in ready words", async () => {
    const card = await get(`${path}/card?servings=7&region=XA&currency=XTS`).set("origin", "https://blog.example");
    expect(card.headers).toMatchObject({
      "access-control-allow-origin": "*",
      "cross-origin-resource-policy": "cross-origin",
      "content-type": "application/json; charset=utf-8",
    });
    expect(card.body).toMatchObject({
      servings: 7,
      servesAsWritten: 4,
      revision: 1,
      language: "en-GB",
      direction: "ltr",
    });
    const { data } = await test.ask(`{
      plan(publisher: "third-gate-allotments", slug: "roots-and-barley") {
        scaled(servings: 7, household: { region: "XA" }) { cautions { text } allergens {
          findings { name presence asIngredient { presence } } labelsToRead { food { name } }
        } }
      }
    }`);
    const { cautions, allergens } = (data?.["plan"] as { scaled: Pick<Scaled, "cautions"> & { allergens: OnLabels } })
      .scaled;
    const body = card.body as {
      cautions: readonly { text: string }[];
      allergens: readonly { presence: string; names: readonly string[] }[];
    };
    expect(body.cautions.map(({ text }) => text)).toEqual(cautions.map(({ text }) => text));
    const names = (presence: string, ingredient?: string) =>
      allergens.findings
        .filter(
          (each) =>
            each.presence === presence && (ingredient ?? each.asIngredient.presence) === each.asIngredient.presence,
        )
        .map(({ name }) => name);
    expect(names("UNKNOWN", "UNKNOWN").length).toBeGreaterThan(0);
    // What is open is grouped by the foods whose labels say it; every other allergen is named.
    expect(body.allergens).toEqual(
      [
        { presence: "Contains", names: names("CONTAINS") },
        { presence: "May contain", names: names("MAY_CONTAIN") },
        { presence: "Look at the label", names: allergens.labelsToRead.map(({ food }) => food.name) },
        { presence: "Not an ingredient, traces not known", names: names("UNKNOWN", "DOES_NOT_CONTAIN") },
        { presence: "Does not contain", names: names("DOES_NOT_CONTAIN") },
      ].filter((group) => group.names.length > 0),
    );
    const wrong = await get(`${path}/card?servings=none`);
    expect([wrong.status, wrong.headers["access-control-allow-origin"]]).toEqual([400, "*"]);
    expect(wrong.body).toMatchObject({ status: 400, problems: [{ path: ["servings"], where: "servings" }] });
    expect((await get("/p/nobody/nothing/card")).status).toBe(404);
  });

  it("serves the element for other people's pages", async () => {
    const { status, headers } = await get("/embed.js");
    expect(status).toBe(200);
    expect(headers["content-type"]).toContain("text/javascript");
    expect(headers["cache-control"]).toContain("max-age=86400");
    expect((await get("/embed.js").set("if-none-match", headers["etag"] ?? "")).status).toBe(304);
  });

  it("names every diet there is a rule for", async () => {
    const { text } = await get(path);
    const boxes = elementsOf(text).filter((element) => attributeOf(element, "name") === "diet");
    expect(boxes.map((box) => attributeOf(box, "value"))).toEqual(rules.allergens.diets.map(({ code }) => code));
  });
});

/** The option of a select that is chosen. */
const chosenIn = (select: Element): string | null => {
  const options = select.childNodes.filter((node): node is Element => "tagName" in node);
  const chosen = options.find((option) => attributeOf(option, "selected") !== null);
  return chosen === undefined ? null : attributeOf(chosen, "value");
};

interface Scaled {
  readonly components: readonly {
    readonly component: { readonly title: string };
    readonly made: { readonly text: string };
    readonly leftOver: { readonly text: string; readonly value: number };
  }[];
  readonly shoppingList: {
    readonly cost: { readonly atTill: { amount: string; currency: string }; readonly perServing: { amount: string } };
  };
  readonly session: { readonly tasks: readonly { readonly startsAt: string; readonly text: string }[] };
  readonly cautions: readonly { readonly text: string; readonly source: { readonly title: string } }[];
  readonly allergens: { readonly findings: readonly { readonly name: string; readonly presence: string }[] };
}

interface OnLabels {
  readonly findings: readonly {
    readonly name: string;
    readonly presence: string;
    readonly asIngredient: { readonly presence: string };
  }[];
  readonly labelsToRead: readonly { readonly food: { readonly name: string } }[];
}
