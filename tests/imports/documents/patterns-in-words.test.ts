import { describe, expect, it } from "vitest";
import { readDocuments } from "../../../src/imports/documents/read-documents.js";
import { problemText } from "../../../src/exports/sentences/problem-text.js";

const plan = (facts: string): string =>
  `kind: plan
publisher: third-gate-allotments
slug: a-plan
title: A plan
serves: 2
meals:
  - { slug: supper, title: Supper, day: 1, lines: [{ food: salt, rule: to taste }] }
`.replace(...(facts.split(" => ") as [string, string]));
const food = (facts: string): string =>
  `kind: food
slug: carrot
names: { en: carrot }
aisle: vegetables
shopped-by: mass
usda: "11124"
edible: [{ share: 80 %, source: writer }]
packs: [{ id: bag, name: bag, content: 1 kg, price: 1.25 XTS, region: GB, seen: 2026-03-02, source: writer }]
`.replace(...(facts.split(" => ") as [string, string]));

describe("What has to be written in a certain way", () => {
  it.each([
    [plan('day: 1 => day: 1, at: "25:00"'), "an hour from 00:00 to 23:59, such as 12:30", "25:00"],
    [plan("slug: a-plan => slug: A plan"), "lower-case letters and digits", "A plan"],
    [plan("serves: 2 => serves: 2\nlocale: english"), "a language tag such as en", "english"],
    ["kind: publisher\nslug: third-gate-allotments\ncurrency: euro\n", "an ISO 4217 code, such as EUR", "euro"],
    [food('usda: "11124" => usda: "111"'), "five digits", "111"],
    [food("1.25 XTS => XTS 1.25"), "an amount and a currency code, such as 1.25 XTS", "XTS 1.25"],
    [food("share: 80 % => share: most"), "", ""],
  ])("is asked for in words, never by its pattern: %#", (document, expected, got) => {
    const { problems } = readDocuments(document, "it.yaml");
    const said = problems.map(({ problem }) => problemText(problem));
    expect(said.length).toBeGreaterThan(0);
    for (const sentence of said) expect(sentence).not.toMatch(/\/\^|\\d|\$\//);
    expect(said.join(" ")).toContain(expected);
    expect(said.join(" ")).toContain(got);
  });
});
