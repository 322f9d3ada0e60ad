// An issue of a newsletter: every plan that a publisher brought out since a day, worked out for as many as will eat.
//   node examples/newsletter.mjs http://127.0.0.1:4000 third-gate-allotments --since 2026-02-01 --servings 4 > issue.md
//   node examples/newsletter.mjs ... --mail > issue.eml
import { parseArgs } from "node:util";

const { values: asked, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    since: { type: "string", default: "1970-01-01" },
    servings: { type: "string", default: "4" },
    mail: { type: "boolean", default: false },
  },
});
const [address = "http://127.0.0.1:4000", publisher = "third-gate-allotments"] = positionals;

/** The answer, or an end with the service's own words: problems come as RFC 9457 documents. */
async function get(url) {
  const response = await fetch(url);
  if (response.ok) return response;
  const { title, detail, problems = [] } = await response.json();
  console.error([`${url}: ${title}`, detail, ...problems.map(({ message }) => message)].filter(Boolean).join("\n"));
  process.exit(1);
}

/** Newest first, so the first one that is too old ends it. */
async function publishedSince(day) {
  const found = [];
  let next = `${address}/v1/plans?publisher=${encodeURIComponent(publisher)}&first=20`;
  while (next !== null) {
    const page = await (await get(next)).json();
    const young = page.items.filter(({ publishedAt }) => publishedAt >= day);
    found.push(...young);
    next = young.length < page.items.length ? null : page.next && new URL(page.next, address).href;
  }
  return found;
}

/** Pinned to the revision: the issue says next year what it says today. */
async function textOf({ slug, revision }, form) {
  const question = new URLSearchParams({ servings: asked.servings, revision: String(revision) });
  return (await get(`${address}/v1/plans/${publisher}/${slug}.${form}?${question}`)).text();
}

const plans = await publishedSince(asked.since);
if (plans.length === 0) {
  console.error(`Nothing was published since ${asked.since}.`);
  process.exit(1);
}
const texts = await Promise.all(plans.map((plan) => textOf(plan, asked.mail ? "txt" : "md")));
const links = plans.map(({ slug, title }) => `${title}: ${address}/p/${publisher}/${slug}`);

if (asked.mail) {
  const base64 = (text) => Buffer.from(text).toString("base64");
  const body = [...texts, `Work it out for others:\n${links.join("\n")}\n`].join("\n\n");
  const head = [
    // A few words at a time: an encoded word has 75 characters at most (RFC 2047).
    `Subject: ${plans[0].title
      .match(/.{1,12}/gu)
      .map((part) => `=?utf-8?B?${base64(part)}?=`)
      .join("\r\n ")}`,
    "MIME-Version: 1.0",
    "Content-Type: text/plain; charset=utf-8",
    "Content-Transfer-Encoding: base64",
  ];
  console.log(`${head.join("\r\n")}\r\n\r\n${base64(body).replace(/.{76}/g, "$&\r\n")}\r`);
} else {
  const list = links.map((link) => `- ${link.replace(/(https?:\S+)$/, "<$1>")}`).join("\n");
  console.log(`${texts.join("\n\n---\n\n")}\n\n---\n\n## Work it out for others\n\n${list}`);
}
