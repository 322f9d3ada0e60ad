import Fastify from "fastify";
import { afterAll, beforeAll, expect, it } from "vitest";
import request from "supertest";
import { setAnswerHeaders } from "../../../src/app/server/answer-headers.js";
import { registerSchemas } from "../../../src/app/server/schemas.js";
import { documentKinds, jsonSchemas } from "../../../src/imports/documents/document-kinds.js";

const app = Fastify();
beforeAll(async () => {
  setAnswerHeaders(app);
  registerSchemas(app);
  await app.ready();
});
afterAll(() => app.close());

it.each(documentKinds)("the schema of a %s is served for editors, also to pages elsewhere", async (kind) => {
  const { status, headers, text } = await request(app.server).get(`/schemas/${kind}.json`);
  expect(status).toBe(200);
  expect(headers["content-type"]).toBe("application/schema+json; charset=utf-8");
  expect(headers["access-control-allow-origin"]).toBe("*");
  expect(JSON.parse(text)).toEqual(jsonSchemas()[kind]);
});

it("there is no schema of what is no document", async () => {
  expect((await request(app.server).get("/schemas/meal.json")).status).toBe(404);
});
