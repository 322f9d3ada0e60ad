import { describe, expect, it } from "vitest";
import { icalendar } from "../../../src/exports/calendar/icalendar.js";
import { mailHtml } from "../../../src/exports/document/mail-html.js";
import { planMarkdown } from "../../../src/exports/document/markdown.js";
import { planCard } from "../../../src/exports/page/card.js";
import { blankForm } from "../../../src/exports/page/form/plan-form.js";
import { planPage } from "../../../src/exports/page/plan-page.js";
import { plainText } from "../../../src/exports/document/plain-text.js";
import { addresses, answerOf, demo, rules, sundayHousehold } from "../demo-answer.js";

const links = { origin: "https://plans.example", style: "/p-assets/page.css", ticks: null, cook: null };

/** Everything that a reader of a region is shown of a plan, by the way it goes out. */
async function shown(region: string, bundle: (typeof demo.bundles)[number]): Promise<Readonly<Record<string, string>>> {
  const answer = await answerOf(bundle, 7, { ...sundayHousehold, region });
  const calendar = icalendar(answer, addresses);
  const { publication } = answer;
  return {
    markdown: planMarkdown(answer, addresses, null),
    mail: mailHtml(answer, addresses, null),
    page: planPage({ publication, bundle, form: blankForm, diets: rules.allergens.diets, answer, problems: [], links }),
    terminal: plainText(answer),
    card: JSON.stringify(planCard(answer, addresses.plan)),
    calendar: calendar.ok ? calendar.value.replaceAll("\r\n ", "") : "",
  };
}

/** The plans with steps that are set to a temperature, and these temperatures. */
const heated = demo.bundles.flatMap((bundle) => {
  const works = [...bundle.components, ...bundle.plan.meals];
  const steps = works.flatMap((work) => work.steps).filter(({ temperatureC }) => temperatureC !== null);
  return steps.length === 0 ? [] : [{ slug: bundle.plan.slug, bundle, steps }];
});

/** What a writer says of heat in their own words, which nobody changes. */
const writersDegrees = (bundle: (typeof demo.bundles)[number]): readonly string[] =>
  [...bundle.components, ...bundle.plan.meals].flatMap(({ steps }) => steps.map(({ text }) => text));

describe("how hot a step is", () => {
  it("is asked of some plans of the demo", () => {
    expect(heated.map(({ steps }) => steps.length).reduce((a, b) => a + b, 0)).toBeGreaterThan(1);
  });

  describe.each(heated)("of the plan $slug", ({ bundle, steps }) => {
    const withoutWriter = (text: string): string =>
      writersDegrees(bundle).reduce((rest, words) => rest.replaceAll(words, ""), text);
    const asides = /(?<![\p{L}\d])(\d{2,3}) °([CF])(?![\p{L}\d])/gu;
    const set = [...new Set(steps.flatMap(({ temperatureC }) => temperatureC ?? []))];
    const heats = (text: string): readonly string[] => {
      return [...withoutWriter(text).matchAll(asides)]
        .map(([all]) => all)
        .filter((all) => set.includes(Number.parseInt(all, 10)) || /^[2-4]\d[05] °F$/.test(all));
    };

    it.each(["US", "US-WA", "PR", "BS"])(
      "is said in °F to readers in %s, by every way out, and on the page in °C beside it",
      async (region) => {
        const ways = await shown(region, bundle);
        for (const way of ["markdown", "mail", "page"]) expect(heats(ways[way] ?? ""), way).not.toEqual([]);
        for (const celsius of set) {
          expect(ways["page"]).toMatch(new RegExp(`\\d °F \\(${celsius} °C\\)`, "u"));
          expect(ways["page"]).not.toContain(`${celsius} °C (`);
        }
        for (const [way, text] of Object.entries(ways)) {
          if (way === "page") continue;
          expect(
            heats(text).filter((each) => each.endsWith("C")),
            way,
          ).toEqual([]);
        }
      },
    );

    it.each(["GB", "DE", "CA", "XA"])(
      "is said in °C to readers in %s, and on the page in °F beside it",
      async (region) => {
        const ways = await shown(region, bundle);
        for (const celsius of set) {
          expect(ways["page"]).toMatch(new RegExp(`${celsius} °C \\(\\d+ °F\\)`, "u"));
          expect(ways["page"]).not.toContain(`°F (${celsius} °C)`);
        }
        for (const [way, text] of Object.entries(ways)) {
          if (way === "page") continue;
          expect(
            heats(text).filter((each) => each.endsWith("F")),
            way,
          ).toEqual([]);
        }
      },
    );

    it("leaves the writer's own words as they are", async () => {
      const { markdown = "" } = await shown("US", bundle);
      for (const { text } of steps) expect(markdown.replaceAll("\\", "")).toContain(text);
    });
  });
});
