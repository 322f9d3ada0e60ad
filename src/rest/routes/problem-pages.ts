import type { FastifyInstance } from "fastify";
import { markupText } from "../../exports/document/markup-text.js";
import { problemAddress, problemKinds, type ProblemKind } from "../problem-kinds.js";
import { notFound } from "../refusal.js";
import { sendRefusal } from "../send-problem.js";

/** Text with code between backticks, as the descriptions have it. */
const inline = (text: string): string => markupText(text).replace(/`([^`]+)`/g, "<code>$1</code>");

const isKind = (name: string): name is ProblemKind => Object.hasOwn(problemKinds, name);

const page = (kind: ProblemKind): string => {
  const { status, title, help } = problemKinds[kind];
  const others = Object.entries(problemKinds).map(
    ([name, each]) => `<li><a href="${problemAddress(name)}">${each.status} ${markupText(each.title)}</a></li>`,
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${markupText(title)}</title>
</head>
<body>
<main>
<h1>${markupText(title)}</h1>
<p>HTTP status ${status}, type <code>${problemAddress(kind)}</code></p>
<p>${inline(help)}</p>
</main>
<nav aria-label="All problems">
<h2>All problems</h2>
<ul>
${others.join("\n")}
</ul>
</nav>
</body>
</html>
`;
};

/** Where the `type` of a problem document leads: what it means and what to do, for people. */
export function registerProblemPages(app: FastifyInstance): void {
  app.get(problemAddress(":kind"), { config: { reader: "PAGE" } }, (request, reply) => {
    const { kind } = request.params as { readonly kind: string };
    if (!isKind(kind)) return sendRefusal(notFound("There is no such kind of problem."), request, reply);
    return reply.header("cache-control", "public, max-age=3600").type("text/html; charset=utf-8").send(page(kind));
  });
}
