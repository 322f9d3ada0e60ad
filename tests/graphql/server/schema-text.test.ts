import { readFileSync } from "node:fs";
import { buildSchema, getIntrospectionQuery, type IntrospectionQuery } from "graphql";
import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { usualEngine } from "../../../src/graphql/server/engine-options.js";
import { describeOnEmbedded } from "../../kit/databases.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

describeOnEmbedded("/schema.graphql", (open) => {
  let app: TestApp;
  let closed: TestApp;
  beforeAll(async () => {
    const { data } = await open();
    app = await openTestApp(data);
    closed = await openTestApp(data, undefined, undefined, {}, { graphql: { ...usualEngine, introspection: false } });
  });
  afterAll(async () => {
    await closed.app.close();
    await app.close();
  });

  it("is the committed schema, which other programs read, and is sent again only where it changed", async () => {
    const first = await request(app.app.server).get("/schema.graphql").set("accept-encoding", "identity");
    expect([first.status, first.headers["content-type"]]).toEqual([200, "text/plain; charset=utf-8"]);
    expect(first.text).toBe(readFileSync("schema.graphql", "utf8"));
    expect(buildSchema(first.text).getQueryType()?.name).toBe("Query");
    const etag = String(first.headers["etag"]);
    const again = await request(app.app.server)
      .get("/schema.graphql")
      .set({ "if-none-match": etag, "accept-encoding": "identity" });
    expect(again.status).toBe(304);
    const packed = await request(app.app.server).get("/schema.graphql").set("accept-encoding", "br");
    expect([packed.headers["content-encoding"], packed.headers["vary"]]).toEqual(["br", "Accept-Encoding"]);
  });

  it("names the standards of instants and days, as introspection does", async () => {
    const { data } = await app.ask(getIntrospectionQuery({ specifiedByUrl: true }));
    const { types } = (data as unknown as IntrospectionQuery).__schema;
    const urls = types.flatMap((type) =>
      type.kind === "SCALAR" && type.specifiedByURL ? [[type.name, type.specifiedByURL]] : [],
    );
    const rfc3339 = "https://www.rfc-editor.org/rfc/rfc3339#section-5.6";
    expect(urls).toEqual(
      expect.arrayContaining([
        ["DateTime", rfc3339],
        ["Date", rfc3339],
      ]),
    );
  });

  it("is not there where introspection is turned off", async () => {
    expect((await request(closed.app.server).get("/schema.graphql")).status).toBe(404);
  });
});
