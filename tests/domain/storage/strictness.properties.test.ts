import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { KeptComponent, StorageAnswer } from "../../../src/domain/storage/guidance.js";
import { ask, classes, eaten, guidanceOf, kept, ruled, rules, says, uses } from "./kept-builders.js";

const keepsAs = fc.constantFrom(...classes.map(({ code }) => code));
const word = fc
  .tuple(
    fc.constantFrom("FRIDGE" as const, "ROOM" as const, "FREEZER" as const),
    fc.constantFrom(0.5, 1, 2, 3, 5, 8, 30),
  )
  .map(([place, days]) => says(place, days));
const region = fc.constantFrom(null, "US", "GB", "CA", "DE", "NZ", "XA");
const audience = fc.constantFrom("HOUSEHOLD" as const, "FOOD_SERVICE" as const);
const session = fc.constantFrom(
  null,
  { start: "2026-10-03T23:40:00+09:30", zone: "Australia/Adelaide" },
  { start: "2026-11-29T08:00:00Z", zone: "Europe/London" },
);

/** Components c0, c1…, each made from some of those before it. */
const components: fc.Arbitrary<readonly KeptComponent[]> = fc
  .array(
    fc.record({
      keepsAs: fc.option(keepsAs),
      keeping: fc.array(word, { maxLength: 3 }),
      parts: fc.array(fc.nat(5), { maxLength: 2 }),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((all) =>
    all.map((each, index) =>
      kept(`c${index}`, each.keepsAs, each.keeping, {
        lines: uses(...each.parts.filter((part) => part < index).map((part) => `c${part}`)),
      }),
    ),
  );

const asked = fc.record({ region, audience, session });

const daysOf = (answer: StorageAnswer): ReadonlyMap<string, number> =>
  new Map(
    answer.guidance.map(({ subject, place, days, keepUntil }) => [
      `${subject.kind} ${subject.slug} ${place}`,
      keepUntil === null ? days : Date.parse(keepUntil),
    ]),
  );
/** The longest of the fridge and the shelf: what meals go by. */
const mainDays = (answer: StorageAnswer): ReadonlyMap<string, number> => {
  const best = new Map<string, number>();
  for (const [key, days] of daysOf(answer)) {
    const [kind, slug, place] = key.split(" ");
    if (place === "FREEZER") continue;
    best.set(`${kind} ${slug}`, Math.max(days, best.get(`${kind} ${slug}`) ?? -Infinity));
  }
  return best;
};

describe("the stricter always wins", () => {
  it("no guidance lasts longer than any word or rule it shows, and exactly one decides", () => {
    fc.assert(
      fc.property(components, asked, (things, facts) => {
        const meals = things.map(({ component }, index) => eaten(`m${index}`, index, component.slug));
        for (const found of ask({ components: things, meals }, facts).guidance) {
          const decides = found.basis.filter((basis) => basis.decides);
          expect(decides).toHaveLength(1);
          expect(found.days).toBeLessThanOrEqual(Math.max(0, ...decides.map(({ days }) => days)));
          const least = Math.min(...found.basis.map(({ days, daysFrom }) => daysFrom ?? days));
          if (facts.session === null) expect(found.days).toBe(least);
          else expect(Math.floor(found.days)).toBe(Math.floor(least));
        }
      }),
    );
  });

  it("a class that the rules do not know keeps no longer than any that they know", () => {
    fc.assert(
      fc.property(
        keepsAs,
        asked,
        fc.constantFrom("FRIDGE" as const, "FREEZER" as const, "ROOM" as const),
        (code, facts, place) => {
          const words = [says(place, 3000), says("FRIDGE", 3000)];
          const lasting = (slug: string): number =>
            guidanceOf(ask({ components: [kept("c", slug, words)] }, facts), "c", place).days;
          expect(lasting("cooked-vegetables")).toBeLessThanOrEqual(lasting(code));
        },
      ),
    );
  });

  it("every writer's word for a place is shown beside every ceiling in force for it", () => {
    fc.assert(
      fc.property(keepsAs, fc.array(word, { minLength: 1, maxLength: 3 }), asked, (code, words, facts) => {
        const answer = ask({ components: [kept("c", code, words)] }, facts);
        for (const { place, basis } of answer.guidance) {
          const written = words.filter((each) => each.place === place).map(({ days }) => days);
          expect(basis.filter(({ kind }) => kind === "WRITER").map(({ days }) => days)).toEqual(written);
          for (const each of basis) if (each.kind === "PUBLISHED") expect(each.sourced).toBe(true);
        }
      }),
    );
  });

  it("one more published rule of a class never makes anything of it keep longer in its region", () => {
    // Only among rules of one region and kitchen: a class that had to borrow keeps by its own rule once it has one.
    const ofHere = rules.filter((rule) => rule.region === "US" && rule.audience === "HOUSEHOLD");
    const more = fc.record({ keepsAs, days: fc.nat(10), firstDay: fc.constantFrom(0 as const, 1 as const) });
    fc.assert(
      fc.property(components, session, more, (things, at, facts) => {
        const answer = (published: typeof rules) =>
          daysOf(ask({ components: things }, { region: "US", session: at, rules: published }));
        const before = answer(ofHere);
        const after = answer([...ofHere, ruled(facts)]);
        for (const [key, days] of before) expect(after.get(key)).toBeLessThanOrEqual(days);
      }),
    );
  });

  it("one more word of the writer never makes anything keep longer", () => {
    fc.assert(
      fc.property(components, asked, word, (things, facts, more) => {
        const [first] = things;
        if (first === undefined || first.component.keeping.every(({ place }) => place !== more.place)) return;
        const stricter = kept(first.component.slug, first.component.keepsAs, [...first.component.keeping, more]);
        const before = daysOf(ask({ components: [first] }, facts));
        const after = daysOf(ask({ components: [stricter] }, facts));
        for (const [key, days] of after) expect(days).toBeLessThanOrEqual(before.get(key) ?? days);
      }),
    );
  });
});

describe("unknown stays unknown", () => {
  it("without its facts a thing is unknown, and so is all that is made from it", () => {
    fc.assert(
      fc.property(components, asked, fc.nat(5), (things, facts, at) => {
        const target = things[at % things.length];
        if (target === undefined) return;
        const { slug } = target.component;
        const bare = things.map((each) => (each === target ? kept(slug, null, [], { lines: each.lines }) : each));
        const meals = [eaten("meal", 1, `c${things.length - 1}`)];
        const before = ask({ components: things, meals }, facts);
        const after = ask({ components: bare, meals }, facts);
        expect(after.unknown.map(({ subject }) => subject.slug)).toContain(slug);
        expect(after.warnings).toContainEqual(expect.objectContaining({ code: "KEEPING_UNKNOWN" }));
        // Nothing that was unknown becomes known, and what stays known is not changed by it.
        const unknownBefore = new Set(before.unknown.map(({ subject }) => subject.slug));
        for (const { subject } of after.guidance) expect(unknownBefore.has(subject.slug)).toBe(false);
        for (const [key, days] of daysOf(after)) expect(days).toBe(daysOf(before).get(key));
        for (const [key] of daysOf(after)) {
          const maker = things.find(({ component }) => key.split(" ")[1] === component.slug);
          expect(JSON.stringify(maker?.lines ?? [])).not.toContain(`"${slug}"`);
        }
      }),
    );
  });

  it("without a region nothing keeps longer than with one", () => {
    fc.assert(
      fc.property(components, asked, (things, facts) => {
        const named = mainDays(ask({ components: things }, facts));
        const unnamed = mainDays(ask({ components: things }, { ...facts, region: null }));
        for (const [key, days] of unnamed) expect(days).toBeLessThanOrEqual(named.get(key) ?? -1);
        expect([...unnamed.keys()]).toEqual([...named.keys()]);
      }),
    );
  });

  it("without a session there is no last day, and no meal is less too late by the calendar", () => {
    fc.assert(
      fc.property(components, region, (things, where) => {
        const meals = things.map(({ component }, index) => eaten(`m${index}`, index * 2, component.slug));
        const answer = ask({ components: things, meals }, { region: where });
        for (const { keepUntil, lastDay, days, tooLateFor, place } of answer.guidance) {
          expect([keepUntil, lastDay]).toEqual([null, null]);
          if (place === "FREEZER") continue;
          for (const slug of tooLateFor) expect(Number(slug.slice(1)) * 2 + 18 / 24).toBeGreaterThan(days + 9 / 24);
        }
      }),
    );
  });

  it("without a class only the writer speaks, and the answer says that no rule was found", () => {
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 3 }), asked, (words, facts) => {
        const answer = ask({ components: [kept("c", null, words)] }, facts);
        const main = answer.guidance.find(({ place }) => place !== "FREEZER");
        if (main === undefined) expect(answer.unknown).toHaveLength(1);
        else {
          expect(answer.guidance[0]?.advice).toContainEqual({ code: "NO_PUBLISHED_RULE", keepsAs: null });
          expect(answer.guidance.flatMap(({ basis }) => basis).every(({ sourced }) => !sourced)).toBe(true);
        }
      }),
    );
  });
});
