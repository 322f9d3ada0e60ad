import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { publisher } from "../../kit/plan-writer.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { sampleImages } from "../../kit/sample-images.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const component = `kind: component
slug: pictured-barley
title: Boiled barley
measured-in: metric
image: { file: barley.png, alt: A pot of barley }
lines:
  - { food: pearl-barley, amount: 300 g }
yield: { amount: 900 g }
steps:
  - { do: Boil., time: 40 min, hands: off, appliance: hob-ring, uses: [pearl-barley] }
`;
const plan = (file: string): string => `kind: plan
publisher: ${publisher}
slug: pictured
title: A week in pictures
locale: en-GB
measured-in: metric
serves: 2
licence: CC-BY-4.0
image: { file: ${file}, alt: "Carrots, cut <i>thin</i>", credit: Third Gate, licence: CC-BY-SA-4.0 }
kitchen: { appliances: { hob-ring: 2 } }
meals:
  - slug: bowl
    title: Bowl
    day: 1
    image: { file: bowl.png, alt: A bowl }
    lines:
      - { component: pictured-barley, amount: 400 g }
`;
const saveDocuments = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) {
  drafts { kind slug version } problems { code message } } }`;
const publishPlan = `mutation ($input: PublishPlanInput!) { publishPlan(input: $input) {
  plan { revision } problems { code message path file line column } } }`;
const image = `{ url alt credit licence width height placeholder hash small: url(width: 10) medium: url(width: 321, format: AVIF) large: url(width: 9999, format: WEBP) }`;
const read = `query ($revision: Int) { plan(publisher: "${publisher}", slug: "pictured", revision: $revision) {
  revision licence image ${image} meals { image { alt } } components { image { alt } } publisher { image { alt } } } }`;
const removeImage = `mutation ($input: RemoveImageInput!) { removeImage(input: $input) { removed problems { code message } } }`;

describeOnBothDatabases("a plan with pictures", (open) => {
  let app: TestApp;
  let token: string;
  const samples = sampleImages(400, 300);

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
    token = await app.tokenFor(publisher, ["READ_DRAFTS", "WRITE", "PUBLISH"]);
  });
  afterAll(() => app.close());

  async function upload(file: string, kind: string): Promise<string> {
    const answer = await request(app.app.server)
      .post(`/v1/publishers/${publisher}/images?file=${file}`)
      .set({ authorization: `Bearer ${token}` })
      .send((await samples)[kind]);
    expect(answer.status, answer.text).toBe(200);
    return String(answer.body.hash);
  }
  const save = (texts: readonly string[], expected: readonly object[]) =>
    app.ask(
      saveDocuments,
      { input: { publisher, texts: texts.map((text, at) => ({ name: `${at}.yaml`, text })), expected } },
      token,
    );
  const publish = async (expectedVersion: number) =>
    (await app.ask(publishPlan, { input: { publisher, slug: "pictured", expectedVersion } }, token)).data?.[
      "publishPlan"
    ] as { plan: { revision: number } | null; problems: readonly { code: string; path: readonly string[] }[] };
  const shown = async (revision: number | null = null) =>
    (await app.ask(read, { revision })).data?.["plan"] as {
      revision: number;
      image: { hash: string; url: string } | null;
      meals: readonly unknown[];
    } | null;

  it("is not published before its pictures were handed in, and says where each is named", async () => {
    const saved = await save([component, plan("soup.jpg")], []);
    expect(saved.errors).toEqual([]);
    expect(saved.data?.["saveDocuments"]).toMatchObject({ problems: [] });
    const refused = await publish(1);
    expect(refused.plan).toBeNull();
    expect(refused.problems).toMatchObject([
      { code: "UNKNOWN_IMAGE", path: ["image", "file"], line: 9 },
      { code: "UNKNOWN_IMAGE", path: ["meals", "0", "image", "file"], line: 15 },
      { code: "UNKNOWN_IMAGE", path: ["image", "file"], line: 5 },
    ]);
  });

  it("shows them with all that is said of them, frozen as they were when it was published", async () => {
    const first = await upload("soup.jpg", "JPEG");
    await upload("bowl.png", "PNG");
    await upload("barley.png", "PNG");
    expect(await publish(1)).toMatchObject({ plan: { revision: 1 }, problems: [] });
    const at = `/images/${publisher}/${first}`;
    const said = { alt: "Carrots, cut <i>thin</i>", credit: "Third Gate", licence: "CC-BY-SA-4.0" };
    expect(await shown()).toMatchObject({
      licence: "CC-BY-4.0",
      image: { ...said, width: 400, height: 300, hash: first, url: `${at}/400.jpg` },
      meals: [{ image: { alt: "A bowl" } }],
      components: [{ image: { alt: "A pot of barley" } }],
      publisher: { image: null },
    });
    expect((await shown())?.image).toMatchObject({
      small: `${at}/320.jpg`,
      medium: `${at}/400.avif`,
      large: `${at}/400.webp`,
    });
    const second = await upload("soup.jpg", "WebP");
    expect((await shown())?.image?.hash).toBe(first);
    expect(await publish(1)).toMatchObject({ plan: { revision: 2 }, problems: [] });
    expect((await shown())?.image?.hash).toBe(second);
    expect((await shown(1))?.image?.hash).toBe(first);
  });

  it("is the same document in one's drafts, picture and all", async () => {
    const [draft] = await app.deps.data.plans.drafts([{ publisher, slug: "pictured" }]);
    expect(draft?.value).toMatchObject({ licence: "CC-BY-4.0", image: { file: "soup.jpg", credit: "Third Gate" } });
    expect(draft?.value.image).not.toHaveProperty("stored");
  });

  it("is shown without one that was removed, which does not come back", async () => {
    const hash = (await shown())?.image?.hash ?? "";
    const url = (await shown())?.image?.url ?? "";
    expect((await request(app.app.server).get(url)).status).toBe(200);
    const input = { publisher, hash };
    const removed = await app.ask(removeImage, { input }, token);
    expect(removed.data?.["removeImage"]).toEqual({ removed: hash, problems: [] });
    expect(await shown()).toMatchObject({ revision: 2, image: null, meals: [{ image: { alt: "A bowl" } }] });
    expect((await shown(1))?.image).not.toBeNull();
    const gone = await request(app.app.server).get(url);
    expect([gone.status, gone.headers["content-type"]]).toEqual([410, "application/problem+json; charset=utf-8"]);
    const again = await request(app.app.server)
      .post(`/v1/publishers/${publisher}/images`)
      .set({ authorization: `Bearer ${token}` })
      .send((await samples)["WebP"]);
    expect([again.status, again.body.problems[0].code]).toEqual([422, "IMAGE_REFUSED"]);
    expect((await app.ask(removeImage, { input }, token)).data?.["removeImage"]).toMatchObject({
      removed: null,
      problems: [{ code: "UNKNOWN_IMAGE" }],
    });
  });

  it("has a picture of its publisher, which follows the file of its name", async () => {
    const hash = await upload("gate.png", "AVIF");
    const text = `kind: publisher\nslug: ${publisher}\nimage: { file: gate.png, alt: The third gate }\n`;
    expect((await save([text], [])).data?.["saveDocuments"]).toMatchObject({ problems: [] });
    const ask = async () =>
      (await app.ask(`{ plan(publisher: "${publisher}", slug: "pictured") { publisher { image { alt hash } } } }`))
        .data;
    expect(await ask()).toMatchObject({ plan: { publisher: { image: { alt: "The third gate", hash } } } });
    const other = await upload("gate.png", "progressive JPEG");
    expect(await ask()).toMatchObject({ plan: { publisher: { image: { hash: other } } } });
  });

  it("is refused with a picture without words, or on the way to another folder", async () => {
    for (const written of [
      "{ file: soup.jpg }",
      '{ file: soup.jpg, alt: "  " }',
      "{ file: ../soup.jpg, alt: Soup }",
      "{ file: /etc/passwd, alt: Soup }",
      "{ file: 'C:\\\\soup.jpg', alt: Soup }",
    ]) {
      const text = plan("soup.jpg").replace(/^image: .*$/m, `image: ${written}`);
      const { problems } = (await save([text], [])).data?.["saveDocuments"] as {
        problems: readonly { code: string }[];
      };
      expect(
        problems.map(({ code }) => code),
        written,
      ).toContain("BAD_SHAPE");
    }
  });
});
