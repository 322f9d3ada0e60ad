import { join, relative } from "node:path";
import { importRings, importsBelow } from "./import-rings.mjs";

const src = join(import.meta.dirname, "../../src");

/** Rings of the files as they stand on disk; read once for all files of a run. */
let known = null;
const rings = () => (known ??= importRings(importsBelow(src)));

/** @type {import("eslint").Rule.RuleModule} */
export const ringsRule = {
  meta: { type: "problem", schema: [], messages: { ring: "These files import one another in a ring: {{ring}}" } },
  create(context) {
    return {
      Program(node) {
        for (const ring of rings().filter((each) => each.includes(context.filename)))
          context.report({
            node,
            messageId: "ring",
            data: { ring: [...ring, ring[0]].map((file) => relative(src, file)).join(" -> ") },
          });
      },
    };
  },
};
