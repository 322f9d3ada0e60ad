// @ts-nocheck
import path from "node:path";
import { breach } from "./layers.mjs";

/** Reports an import that goes against the arrows of layers.mjs. */
export const layersRule = {
  meta: { type: "problem", schema: [] },
  create(context) {
    const src = path.join(context.cwd, "src") + path.sep;
    const check = (node, typesOnly) => {
      const target = node.source?.value;
      if (typeof target !== "string" || !target.startsWith(".") || !context.filename.startsWith(src)) return;
      const to = path.resolve(path.dirname(context.filename), target);
      if (!to.startsWith(src)) {
        context.report({ node, message: `src may not import ${target}, which lies outside src` });
        return;
      }
      const below = (file) => path.relative(src, file).split(path.sep).join("/");
      const why = breach(below(context.filename), below(to), typesOnly);
      if (why !== null) context.report({ node, message: why });
    };
    const typesOnly = (node, kind) =>
      node[kind] === "type" || (node.specifiers?.length > 0 && node.specifiers.every((each) => each[kind] === "type"));
    return {
      ImportDeclaration: (node) => check(node, typesOnly(node, "importKind")),
      ExportNamedDeclaration: (node) => check(node, typesOnly(node, "exportKind")),
      ExportAllDeclaration: (node) => check(node, node.exportKind === "type"),
      ImportExpression: (node) => check(node, false),
    };
  },
};
