import type { FastifyInstance } from "fastify";

export interface Route {
  /** As it is registered: `/p/:publisher/:slug`. */
  readonly path: string;
  readonly methods: readonly string[];
}

/** Every route of an application, read from the tree that the framework prints. */
export function routesOf(app: FastifyInstance): readonly Route[] {
  const above: string[] = [];
  return app
    .printRoutes({ commonPrefix: false })
    .split("\n")
    .flatMap((line) => {
      const [, indent = "", part = "", methods] =
        /^((?:│ {3}| {4})*[└├]── )(\S+)(?: \(([A-Z, ]+)\))?$/.exec(line) ?? [];
      if (part === "") return [];
      const depth = indent.length / 4 - 1;
      above.splice(depth, above.length, part);
      return methods === undefined ? [] : [{ path: above.join(""), methods: methods.split(", ") }];
    });
}
