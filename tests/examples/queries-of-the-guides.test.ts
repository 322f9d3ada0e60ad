import { readdir, readFile } from "node:fs/promises";
import { NoDeprecatedCustomRule, parse, validate } from "graphql";
import { afterAll, beforeAll, expect, it } from "vitest";
import { createSchema } from "../../src/graphql/schema.js";
import { openRest, type RestApp } from "../rest/open-rest.js";
import { describeOnBothDatabases } from "../kit/databases.js";

/** Every query that the guides show, with where it stands. */
async function shownQueries(): Promise<readonly { readonly name: string; readonly text: string }[]> {
  const guides = (await readdir("docs")).filter((name) => name.endsWith(".md")).map((name) => `docs/${name}`);
  const texts = await Promise.all(
    ["README.md", ...guides].map(async (name) => ({ name, text: await readFile(name, "utf8") })),
  );
  return texts.flatMap(({ name, text }) =>
    [...text.matchAll(/^```graphql\n(.*?)^```$/gms)].map(([, block = ""], at) => ({
      name: `${name}, ${at + 1}`,
      text: block,
    })),
  );
}

describeOnBothDatabases("queries of the guides", (open) => {
  let app: RestApp;
  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  it("fit the schema, use nothing deprecated, and are answered without errors or problems by the demo", async () => {
    const shown = await shownQueries();
    expect(shown.length).toBeGreaterThan(5);
    const schema = createSchema();
    for (const { name, text } of shown) {
      const document = parse(text);
      const faults = [...validate(schema, document), ...validate(schema, document, [NoDeprecatedCustomRule])];
      expect([name, faults.map(({ message }) => message)]).toEqual([name, []]);
      const needsMore = document.definitions.some(
        (each) => each.kind === "OperationDefinition" && each.operation !== "query",
      );
      if (needsMore) continue;
      const { data, errors } = await app.ask(text, {});
      expect([name, errors]).toEqual([name, []]);
      expect([name, JSON.stringify(data).includes('"problems":[{')]).toEqual([name, false]);
      expect([name, Object.values(data ?? {}).includes(null)]).toEqual([name, false]);
    }
  });
});
