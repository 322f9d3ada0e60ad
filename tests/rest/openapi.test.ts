import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, it } from "vitest";
import { endpoints } from "../../src/rest/endpoints.js";
import { openapiDocument } from "../../src/rest/openapi.js";
import { routeOf } from "../../src/rest/register-rest.js";
import { readsAsASentence } from "../kit/reads-as-a-sentence.js";
import { describeOnBothDatabases } from "../kit/databases.js";
import { openRest, type RestApp } from "./open-rest.js";

interface Described {
  readonly paths: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
}

/** What a reader of the document gets: whatever JSON leaves of it. */
const written = JSON.parse(JSON.stringify(openapiDocument(endpoints))) as Described;

/** The router's own list is a tree: every line holds the end of an address, below the line that holds its beginning. */
function listedPaths(tree: string): readonly string[] {
  const above: string[] = [];
  return tree.split("\n").flatMap((line) => {
    const [, indent, part, methods] = /^([│ ]*)[├└]── (\S+)(?: \(([A-Z, ]+)\))?/.exec(line) ?? [];
    if (indent === undefined || part === undefined) return [];
    const depth = indent.length / 4;
    above.splice(depth, Infinity, part);
    return methods === undefined ? [] : [above.join("")];
  });
}

describeOnBothDatabases("the OpenAPI document", (open) => {
  let app: RestApp;

  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  it("is the committed openapi.json (npm run generate:openapi writes it), and what the service answers", async () => {
    expect(written).toEqual(JSON.parse(readFileSync("openapi.json", "utf8")));
    expect((await app.get("/v1/openapi.json")).body).toEqual(written);
  });

  it("holds every address below /v1 that the application has, and no other", () => {
    const paths = listedPaths(app.app.printRoutes({ commonPrefix: false, includeHooks: false }));
    const described = Object.keys(written.paths).map(routeOf);
    expect(paths.filter((path) => path.startsWith("/v1")).toSorted()).toEqual(described.toSorted());
    for (const [path, operations] of Object.entries(written.paths)) {
      for (const method of Object.keys(operations)) {
        expect(app.app.hasRoute({ method: method.toUpperCase() as "GET", url: routeOf(path) })).toBe(true);
      }
    }
  });

  it("describes every parameter, and every member of every answer", () => {
    const missing: string[] = [];
    const riddles: string[] = [];
    const look = (node: unknown, path: string): void => {
      if (typeof node !== "object" || node === null) return;
      for (const [key, value] of Object.entries(node)) look(value, `${path}/${key}`);
      if ("description" in node && typeof node.description === "string" && !readsAsASentence(node.description))
        riddles.push(`${path}: ${node.description}`);
      const described = "description" in node || "$ref" in node;
      if ("in" in node && "name" in node && !described) missing.push(path);
    };
    look(written, "");
    expect(missing).toEqual([]);
    expect(riddles).toEqual([]);
  });
});
