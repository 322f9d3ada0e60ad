import { documentShapes } from "../kit/document-shapes.js";
import { graphql, listOf, times, type AttackRequest, type Target } from "./attack-request.js";

/** What a body may hold, less what stands around the text. */
const largest = 900_000;

const check = ({ publisher }: Target, name: string, texts: readonly string[]): AttackRequest => ({
  ...graphql(
    name,
    "query ($p: String!, $t: [DocumentTextInput!]!) { checkDocuments(publisher: $p, texts: $t) { problems { code message path line } findings { __typename } } }",
    { p: publisher, t: texts.map((text, at) => ({ name: `t${String(at)}.yaml`, text })) },
  ),
  authorised: true,
});

/** Of those who may read drafts: documents of a megabyte, and very many. */
export const documentAttacks = (target: Target): readonly AttackRequest[] => [
  check(target, "a plan of 90,000 keys", [
    `kind: plan\n${times(90_000, (at) => `k${String(at)}: 1\n`, "")}`.slice(0, largest),
  ]),
  ...Object.entries(documentShapes).map(([name, text]) => check(target, `documents of ${name}`, [text(400_000)])),
  check(
    target,
    "40,000 texts",
    listOf(40_000, () => ""),
  ),
  check(
    target,
    "300 texts of wrong keys",
    listOf(300, (at) => `kind: plan\n${times(100, (key) => `k${String(at)}x${String(key)}: 1\n`, "")}`),
  ),
  check(target, "a translation of 40,000 texts that are none", [
    `${plan()}---\nkind: translation\nplan: week\nlanguage: de\nmeals:\n${times(
      140,
      (meal) => `  m${String(meal)}: { steps: { ${times(290, (at) => `w${String(at)}: a, `, "")} } }\n`,
      "",
    )}`,
  ]),
  check(target, "translations of nothing but numbers", [
    plan(times(800, (at) => String(at + 1000), "; ")),
    ...listOf(
      150,
      (at) =>
        `kind: translation\nplan: week\nlanguage: ${tag(at)}\nsummary: ${times(800, (each) => String(each + 5000), "; ")}\n`,
    ),
  ]),
  check(
    target,
    "components in a circle",
    listOf(290, (at) => component(at, (at + 1) % 290)),
  ),
  check(
    target,
    "components in a chain",
    listOf(290, (at) => component(at, at + 1)),
  ),
];

const plan = (summary = "Three suppers."): string =>
  `kind: plan\nslug: week\ntitle: W\nlocale: en\nmeasured-in: metric\nserves: 2\nsummary: ${summary}\nmeals: [{ slug: m1, title: M, day: 0, lines: [], steps: [{ do: Stir. }] }]\n`;

/** Each another language. */
const tag = (at: number): string => `${String.fromCodePoint(97 + Math.floor(at / 26), 97 + (at % 26))}x`;

const component = (at: number, next: number): string =>
  `kind: component\nslug: c${String(at)}\ntitle: C\nlocale: en\nmeasured-in: metric\nlines:\n  - { component: c${String(next)}, amount: 10 g }\nyield: { amount: 100 g, source: writer / weighed }\n`;
