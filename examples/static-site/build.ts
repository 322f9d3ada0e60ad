// A site of static pages: one for each plan of a publisher, and a list of them. Run again, it writes only what changed since.
//   npx tsx examples/static-site/build.ts http://127.0.0.1:4000 third-gate-allotments site --servings 4
import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { connect, type Answer, type PlanSummary } from "prepwright-client";

const { values: asked, positionals } = parseArgs({
  allowPositionals: true,
  options: { servings: { type: "string", default: "4" } },
});
const [address = "http://127.0.0.1:4000", publisher = "third-gate-allotments", folder = "site"] = positionals;
const prepwright = connect({ address });
const placeFile = join(folder, ".place");

/** The data, or an end with the service's own words. */
function dataOf<Data>(answer: Answer<Data>): Data {
  if (answer.ok) return answer.data;
  const { title, detail, problems } = answer.problem;
  process.stderr.write(`${[`${title}: ${detail}`, ...problems.map(({ message }) => message)].join("\n")}\n`);
  process.exit(1);
}

/** The slugs of what happened since the site was built; null: it never was. Moves the place on. */
async function changedSlugs(): Promise<ReadonlySet<string> | null> {
  const place = await readFile(placeFile, "utf8").catch(() => null);
  const changed = new Set<string>();
  let end = place;
  for await (const page of prepwright.changePages({
    publisher,
    first: 100,
    ...(place === null ? {} : { after: place }),
  })) {
    const { items, end: last } = dataOf(page);
    for (const { plan } of items) changed.add(plan.slug);
    end = last ?? end;
  }
  await writeFile(`${placeFile}.new`, end ?? "");
  return place === null || place === "" ? null : changed;
}

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

const pageOf = (language: string, title: string, body: string): string =>
  `<!doctype html>
<html lang="${escaped(language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>${escaped(title)}</title>
</head>
<body>
<h1>${escaped(title)}</h1>
${body}
</body>
</html>
`;

async function planPage({ slug, revision, language }: PlanSummary): Promise<string> {
  const household = { servings: Number(asked.servings), revision };
  const [whole, data] = await Promise.all([
    prepwright.plan({ publisher, slug }, household).then(dataOf),
    prepwright.planText({ publisher, slug }, "jsonld", household).then(dataOf),
  ]);
  const lines = whole.shoppingList.lines.map(({ food, need }) =>
    escaped([food.name, need?.text ?? ""].filter((part) => part !== "").join(": ")),
  );
  const cautions = whole.cautions.map(({ text }) => escaped(text));
  const list = (items: readonly string[]): string => `<ul>\n${items.map((item) => `<li>${item}</li>\n`).join("")}</ul>`;
  return pageOf(
    language,
    whole.title,
    [
      // "<" could end the element early.
      `<script type="application/ld+json">${data.replaceAll("<", "\\u003c")}</script>`,
      list(whole.meals.map(({ title }) => escaped(title))),
      list(lines),
      list(cautions),
      `<p><a href="${escaped(`${address}/p/${publisher}/${slug}`)}">${escaped(whole.title)}</a></p>`,
    ].join("\n"),
  );
}

await mkdir(folder, { recursive: true });
const changed = await changedSlugs();
const plans: PlanSummary[] = [];
for await (const page of prepwright.planPages({ publisher, first: 50 })) plans.push(...dataOf(page).items);
const toWrite = changed === null ? plans : plans.filter(({ slug }) => changed.has(slug));
for (const plan of toWrite) await writeFile(join(folder, `${plan.slug}.html`), await planPage(plan));
// Withdrawn: the page goes too.
const current = new Set(plans.map(({ slug }) => slug));
const gone = [...(changed ?? [])].filter((slug) => !current.has(slug));
for (const slug of gone) await rm(join(folder, `${slug}.html`), { force: true });
const links = plans.map(
  ({ slug, title, language }) => `<li lang="${escaped(language)}"><a href="${slug}.html">${escaped(title)}</a></li>`,
);
await writeFile(join(folder, "index.html"), pageOf("en", publisher, `<ul>\n${links.join("\n")}\n</ul>`));
// Last: a run that broke off begins again at the place where it began.
await writeFile(placeFile, await readFile(`${placeFile}.new`, "utf8"));
process.stdout.write(`${toWrite.length} written, ${gone.length} removed, ${plans.length} in the list\n`);
