/**
 * The arrows of DEVELOPERS.md, once: which folder may import which. The lint rule and tests/layers.test.ts
 * both read this table and find breaches in their own ways.
 */

/** Top folders of src: what each may import at run time, and of what it may import types only. */
export const folders = {
  domain: { imports: ["domain"], types: [] },
  exports: { imports: ["exports", "domain"], types: [] },
  imports: { imports: ["imports", "domain"], types: [] },
  persistence: { imports: ["persistence", "domain"], types: [] },
  services: { imports: ["services", "domain", "exports", "imports", "persistence"], types: [] },
  http: { imports: ["http"], types: [] },
  graphql: { imports: ["graphql", "http", "services", "exports", "domain"], types: [] },
  rest: { imports: ["rest", "http", "services", "exports", "domain"], types: [] },
  browser: { imports: ["browser"], types: ["exports"] },
  jobs: { imports: ["jobs", "services"], types: ["domain"] },
  app: {
    imports: ["app", "domain", "exports", "imports", "persistence", "services", "http", "graphql", "rest", "jobs"],
    types: [],
  },
};

/** Inside domain, from the bottom up: a folder imports itself and what stands on a lower level. */
export const domainLevels = [
  ["model", "writing"],
  ["quantity"],
  ["component"],
  ["storage", "nutrition"],
  ["shopping", "prep-session"],
  ["plan"],
];

const levelOf = (folder) => domainLevels.findIndex((level) => level.includes(folder));

/**
 * @param {string} from path below src, with forward slashes
 * @param {string} to path below src, with forward slashes
 * @param {boolean} typesOnly
 * @returns {string | null} why the import is not allowed
 */
export function breach(from, to, typesOnly) {
  const [fromTop, fromSub] = from.split("/");
  const [toTop, toSub] = to.split("/");
  const rule = folders[fromTop];
  if (rule === undefined) return `src/${fromTop} is not a folder of the layer table (scripts/lint/layers.mjs)`;
  const allowed = rule.imports.includes(toTop) || (typesOnly && rule.types.includes(toTop));
  if (!allowed) return `${fromTop} may not import ${typesOnly ? "types of " : ""}${toTop}`;
  if (fromTop !== "domain") return null;
  // Files directly in domain/ (problem.ts, limits.ts) belong to everybody and may only look at the model.
  const fromLevel = from.split("/").length === 2 ? 0 : levelOf(fromSub);
  const toLevel = to.split("/").length === 2 ? -1 : levelOf(toSub);
  if (fromLevel < 0 || (toLevel < 0 && to.split("/").length > 2))
    return `domain/${fromLevel < 0 ? fromSub : toSub} is not in the layer table`;
  if (fromSub === toSub) return null;
  return toLevel < fromLevel ? null : `domain/${fromSub} may not import domain/${toSub}: it is not below it`;
}
