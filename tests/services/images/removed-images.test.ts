import { afterAll, beforeAll, expect, it } from "vitest";
import request from "supertest";
import { openCache } from "../../../src/services/cache/cache.js";
import { cachedData } from "../../../src/services/cache/cached-data.js";
import { openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { planText, prepareWriting, publisher } from "../../kit/plan-writer.js";
import { sampleImages } from "../../kit/sample-images.js";

const save = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) { problems { message } } }`;
const publish = `mutation ($input: PublishPlanInput!) { publishPlan(input: $input) { problems { message } } }`;
const remove = `mutation ($input: RemoveImageInput!) { removeImage(input: $input) { problems { message } } }`;

describeOnBothDatabases("an instance that remembers answers with pictures", (open) => {
  let app: TestApp;
  let token: string;
  const closing: (() => Promise<void>)[] = [];

  beforeAll(async () => {
    const database = await open();
    token = await prepareWriting(database);
    const cache = openCache(32 * 1024 * 1024);
    const followed = await database.follow(cache.follower);
    app = await openTestApp(cachedData(database.data, cache, followed), undefined, undefined, { cache });
    closing.push(
      () => app.close(),
      () => followed.close(),
    );
  });
  afterAll(async () => {
    for (const close of closing) await close();
  });

  const done = async (query: string, input: object): Promise<void> => {
    const { data, errors } = await app.ask(query, { input }, token);
    expect([Object.values(data ?? {}), errors]).toEqual([[{ problems: [] }], []]);
  };
  const upload = async (file: string, kind: string): Promise<string> => {
    const answer = await request(app.app.server)
      .post(`/v1/publishers/${publisher}/images?file=${file}`)
      .set({ authorization: `Bearer ${token}` })
      .send((await sampleImages(80, 80))[kind]);
    return String(answer.body.hash);
  };
  const shown = async (path: string): Promise<string | null> => {
    const { body } = await request(app.app.server).get(path);
    return (body as { image: { hash: string } | null }).image?.hash ?? null;
  };

  it("shows none that was removed, from the next request on, of a plan and of its publisher", async () => {
    const hash = await upload("salad.png", "PNG");
    const gate = await upload("gate.png", "WebP");
    const plan = `${planText("salad-week", "A salad")}image: { file: salad.png, alt: A salad }\n`;
    const own = `kind: publisher\nslug: ${publisher}\nimage: { file: gate.png, alt: A gate }\n`;
    await done(save, {
      publisher,
      texts: [
        { name: "plan.yaml", text: plan },
        { name: "publisher.yaml", text: own },
      ],
      expected: [],
    });
    await done(publish, { publisher, slug: "salad-week", expectedVersion: 1 });
    const pages = [`/v1/plans/${publisher}/salad-week`, `/p/${publisher}/salad-week/card`];
    const [answer, card] = pages as [string, string];
    for (let time = 0; time < 2; time += 1) {
      expect([await shown(answer), await shown(`/v1/publishers/${publisher}`)]).toEqual([hash, gate]);
      expect((await request(app.app.server).get(card)).text).toContain(hash);
    }
    const frozen = `${answer}/revisions/1`;
    const before = await request(app.app.server).get(frozen);
    await done(remove, { publisher, hash });
    await done(remove, { publisher, hash: gate });
    expect([await shown(answer), await shown(`/v1/publishers/${publisher}`)]).toEqual([null, null]);
    expect((await request(app.app.server).get(card)).text).not.toContain(hash);
    // What a revision froze stays as it was, to the letter: it names the picture, which is gone.
    expect((await request(app.app.server).get(frozen)).text).toBe(before.text);
    expect(before.body.document.plan.image.stored.hash).toBe(hash);
  });
});
