import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, it } from "vitest";
import { endpoints } from "../../src/rest/endpoints.js";
import { openapiDocument } from "../../src/rest/openapi.js";
import { bareType, splitSuffix } from "../../src/rest/format.js";
import { routeOf } from "../../src/rest/register-rest.js";
import { readsAsASentence } from "../kit/reads-as-a-sentence.js";
import { describeOnBothDatabases } from "../kit/databases.js";
import { openRest, type RestApp } from "./open-rest.js";

interface Described {
  readonly paths: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
}

interface Answering {
  readonly responses: Readonly<Record<string, { readonly content?: object; readonly $ref?: string }>>;
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
    const described = new Set(Object.keys(written.paths).map((path) => routeOf(splitSuffix(path).url)));
    expect(paths.filter((path) => path.startsWith("/v1")).toSorted()).toEqual([...described].toSorted());
    for (const [path, operations] of Object.entries(written.paths)) {
      for (const method of Object.keys(operations)) {
        expect(app.app.hasRoute({ method: method.toUpperCase() as "GET", url: routeOf(splitSuffix(path).url) })).toBe(
          true,
        );
      }
    }
  });

  it("has an address of one form for each form of every address, and there one media type and problems", () => {
    for (const { path, method, writings } of endpoints) {
      if (writings.length === 1) continue;
      for (const { format } of writings) {
        const { responses } = written.paths[`${path}.${format.suffix}`]![method.toLowerCase()] as Answering;
        expect(Object.keys(responses["200"]!.content!), path).toEqual([bareType(format.type)]);
      }
    }
    for (const [path, operations] of Object.entries(written.paths))
      for (const { responses } of Object.values(operations) as readonly Answering[]) {
        const json = Object.keys((responses["200"] ?? responses["202"])!.content!).filter((type) =>
          /^application\/json/.test(type),
        );
        expect(json.length, path).toBeLessThanOrEqual(1);
        for (const [status, { $ref }] of Object.entries(responses))
          if (Number(status) >= 400) expect($ref).toBe(`#/components/responses/${status}`);
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
