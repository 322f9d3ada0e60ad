import request from "supertest";
import type { Server } from "node:http";
import { beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { describeOnEmbedded } from "../../kit/databases.js";
import { demo, openTestApp } from "../open-test-app.js";

describeOnEmbedded("the same bytes again", (open) => {
  let server: Server;

  beforeAll(async () => {
    const { app, deps } = await openTestApp((await open()).data);
    server = app.server;
    const loaded = await loadSeeds(deps, demo);
    expect(loaded.ok).toBe(true);
  });

  const text = "query One($n: Int!) { plans(first: $n) { edges { node { title } } } }";

  it("mean the same", async () => {
    const ask = () =>
      request(server)
        .post("/graphql")
        .send({ query: text, variables: { n: 2 } });
    const first = await ask();
    expect(first.status).toBe(200);
    expect((await ask()).body).toEqual(first.body);
    const other = await request(server)
      .post("/graphql")
      .send({ query: text, variables: { n: 1 } });
    expect(other.body).not.toEqual(first.body);
  });

  it("are refused again", async () => {
    for (const body of [{ query: text, variables: { n: "many" } }, { query: "{ nothing }" }, { query: "{" }]) {
      const ask = () => request(server).post("/graphql").send(body);
      const first = await ask();
      expect(first.body.errors).not.toHaveLength(0);
      const again = await ask();
      expect([again.status, again.body]).toEqual([first.status, first.body]);
    }
  });

  it("change something again", async () => {
    // Nobody may, each time.
    const query = 'mutation { createPublisher(input: { slug: "a-b", name: "A" }) { __typename } }';
    for (let time = 0; time < 2; time += 1) {
      const asked = await request(server).post("/graphql").send({ query });
      expect(JSON.stringify(asked.body)).toMatch(/errors|problems/);
    }
  });

  it("are asked by an address as little as before", async () => {
    const mutation = 'mutation { createPublisher(input: { slug: "a-b", name: "A" }) { __typename } }';
    await request(server).post("/graphql").send({ query: mutation });
    const byGet = await request(server).get("/graphql").query({ query: mutation });
    expect(byGet.status).toBe(405);
  });
});
