// An issue of a newsletter: every plan that a publisher brought out since a day, worked out for as many as will eat.
//   npx tsx examples/newsletter.ts http://127.0.0.1:4000 third-gate-allotments --since 2026-02-01 --servings 4 > issue.md
//   npx tsx examples/newsletter.ts ... --mail > issue.eml
import { parseArgs } from "node:util";
import { connect, type Answer, type PlanSummary } from "prepwright-client";

const { values: asked, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    since: { type: "string", default: "1970-01-01" },
    servings: { type: "string", default: "4" },
    mail: { type: "boolean", default: false },
  },
});
const [address = "http://127.0.0.1:4000", publisher = "third-gate-allotments"] = positionals;

const prepwright = connect({ address });

function fail(text: string): never {
  process.stderr.write(`${text}\n`);
  process.exit(1);
}

/** The data, or an end with the service's own words. */
function dataOf<Data>(answer: Answer<Data>): Data {
  if (answer.ok) return answer.data;
  const { title, detail, problems } = answer.problem;
  return fail([`${title}: ${detail}`, ...problems.map(({ message }) => message)].join("\n"));
}

/** Newest first, so the first one that is too old ends it. */
async function publishedSince(day: string): Promise<readonly PlanSummary[]> {
  const found: PlanSummary[] = [];
  for await (const page of prepwright.planPages({ publisher, first: 20 })) {
    const { items } = dataOf(page);
    const young = items.filter(({ publishedAt }) => publishedAt >= day);
    found.push(...young);
    if (young.length < items.length) break;
  }
  return found;
}

/** Pinned to the revision: the issue says next year what it says today. */
const textOf = async ({ slug, revision }: PlanSummary, form: "md" | "txt"): Promise<string> =>
  dataOf(await prepwright.planText({ publisher, slug }, form, { servings: Number(asked.servings), revision }));

const plans = await publishedSince(asked.since);
const [newest] = plans;
if (newest === undefined) fail(`Nothing was published since ${asked.since}.`);
const texts = await Promise.all(plans.map((plan) => textOf(plan, asked.mail ? "txt" : "md")));
const links = plans.map(({ slug, title }) => `${title}: ${address}/p/${publisher}/${slug}`);

if (asked.mail) {
  const base64 = (text: string): string => Buffer.from(text).toString("base64");
  const body = [...texts, `Work it out for others:\n${links.join("\n")}\n`].join("\n\n");
  const head = [
    // A few words at a time: an encoded word has 75 characters at most (RFC 2047).
    `Subject: ${(newest.title.match(/.{1,12}/gu) ?? []).map((part) => `=?utf-8?B?${base64(part)}?=`).join("\r\n ")}`,
    "MIME-Version: 1.0",
    "Content-Type: text/plain; charset=utf-8",
    "Content-Transfer-Encoding: base64",
  ];
  process.stdout.write(`${head.join("\r\n")}\r\n\r\n${base64(body).replace(/.{76}/g, "$&\r\n")}\r\n`);
} else {
  const list = links.map((link) => `- ${link.replace(/(https?:\S+)$/, "<$1>")}`).join("\n");
  process.stdout.write(`${texts.join("\n\n---\n\n")}\n\n---\n\n## Work it out for others\n\n${list}\n`);
}
