import { createHash } from "node:crypto";
import sharp from "sharp";
import request, { type Response } from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../kit/databases.js";
import { sampleImages, turnedPhoto } from "../kit/sample-images.js";
import { expectDescribed } from "./described-answers.js";
import { openRest, publisher, type RestApp } from "./open-rest.js";

const url = `/v1/publishers/${publisher}/images`;
const samples = await sampleImages(400, 300);

describeOnBothDatabases("pictures over REST", (open) => {
  let app: RestApp;
  let token: string;

  beforeAll(async () => {
    app = await openRest(open);
    token = await app.tokenFor(publisher, ["WRITE"]);
  });
  afterAll(() => app.close());

  async function upload(body: Buffer | string, at = url, own = token) {
    const answer = await request(app.app.server)
      .post(at)
      .set({ "content-type": "image/jpeg", authorization: `Bearer ${own}` })
      .send(body);
    expectDescribed("POST", at, answer);
    return answer;
  }
  const get = (path: string, headers: Readonly<Record<string, string>> = {}) =>
    request(app.app.server).get(path).set(headers).buffer(true).parse(inBytes);
  /** Addresses are whole; of them the path. */
  const pathOf = (source: { readonly url: string }): string => new URL(source.url).pathname;

  it("come in, and go out in every width and format as what they say they are", async () => {
    const answer = await upload(samples["JPEG"]!, `${url}?file=photos/soup.jpg`);
    expect([answer.status, answer.body.created, answer.body.width, answer.body.height]).toEqual([200, true, 400, 300]);
    expect(answer.headers["cache-control"]).toBe("no-store");
    const { sources } = answer.body as { sources: { url: string; type: string; width: number; height: number }[] };
    expect(sources.map(({ type, width }) => `${type} ${width}`)).toEqual(
      ["image/avif", "image/webp", "image/jpeg"].flatMap((type) => [`${type} 320`, `${type} 400`]),
    );
    for (const source of sources) {
      const image = await get(pathOf(source));
      expect([image.status, image.headers["content-type"]]).toEqual([200, source.type]);
      expect(image.headers).toMatchObject({
        "cache-control": "public, max-age=86400",
        "x-content-type-options": "nosniff",
        "accept-ranges": "bytes",
        etag: `"${createHash("sha256").update(bytesOf(image)).digest("hex")}"`,
      });
      const { width, height } = await sharp(bytesOf(image)).metadata();
      expect([width, height]).toEqual([source.width, source.height]);
    }
  });

  it("are the same picture when they come again, also by another name", async () => {
    const first = await upload(samples["PNG"]!, `${url}?file=a.png`);
    const again = await upload(samples["PNG"]!, `${url}?file=b/c.png`);
    expect([first.body.created, again.body.created]).toEqual([true, false]);
    expect(again.body.hash).toBe(first.body.hash);
    const named = await app.deps.data.images.byNames(publisher, ["a.png", "b/c.png", "d.png"]);
    expect(named.map((each) => each?.hash ?? null)).toEqual([first.body.hash, first.body.hash, null]);
    const other = await upload(samples["WebP"]!, `${url}?file=a.png`);
    const [renamed] = await app.deps.data.images.byNames(publisher, ["a.png"]);
    expect(renamed?.hash).toBe(other.body.hash);
  });

  it("are kept without what their camera wrote into them", async () => {
    const { body } = await upload(await turnedPhoto());
    expect([body.width, body.height]).toEqual([100, 200]);
    const kept = await app.deps.data.images.bytes(publisher, { hash: body.hash, width: 0, format: "JPEG" }, 0, 1e7);
    expect(createHash("sha256").update(kept).digest("hex")).toBe(body.hash);
    expect((await sharp(kept).metadata()).exif).toBeUndefined();
  });

  it("are sent in part, and not again to who has them (RFC 9110, 13 and 14)", async () => {
    const { body } = await upload(samples["JPEG"]!);
    const path = pathOf(body.sources.at(-1));
    const whole = await get(path);
    const etag = String(whole.headers["etag"]);
    const size = bytesOf(whole).length;
    expect((await get(path, { "if-none-match": etag })).status).toBe(304);
    const part = await get(path, { range: "bytes=10-19" });
    expect([part.status, part.headers["content-range"]]).toEqual([206, `bytes 10-19/${size}`]);
    expect(bytesOf(part)).toEqual(bytesOf(whole).subarray(10, 20));
    const end = await get(path, { range: "bytes=-5", "if-range": etag });
    expect([end.status, bytesOf(end).length]).toEqual([206, 5]);
    expect((await get(path, { range: "bytes=0-4", "if-range": '"other"' })).status).toBe(200);
    const beyond = await get(path, { range: `bytes=${size}-` });
    expect([beyond.status, beyond.headers["content-range"]]).toEqual([416, `bytes */${size}`]);
    const head = await request(app.app.server).head(path);
    expect([head.status, head.headers["content-type"], Number(head.headers["content-length"])]).toEqual([
      200,
      "image/jpeg",
      size,
    ]);
  });

  it("of several pieces are sent whole and in part over their borders", async () => {
    const noisy = await sampleImages(700, 700);
    const { body } = await upload(noisy["PNG"]!);
    const name = { hash: body.hash, width: 0, format: "PNG" } as const;
    const size = (await app.deps.data.images.file(publisher, name))?.size ?? 0;
    expect(size).toBeGreaterThan(1_000_000);
    const kept = await app.deps.data.images.bytes(publisher, name, 0, size - 1);
    expect(createHash("sha256").update(kept).digest("hex")).toBe(body.hash);
    const over = await app.deps.data.images.bytes(publisher, name, 262_100, 524_300);
    expect(Buffer.from(over).equals(Buffer.from(kept.subarray(262_100, 524_301)))).toBe(true);
  });

  it("that are none are refused with what they are and what to send", async () => {
    const refused = async (body: Buffer | string) => {
      const answer = await upload(body);
      expect(answer.status).toBe(422);
      return answer.body.problems[0] as { code: string; message: string };
    };
    expect(await refused("<svg xmlns='http://www.w3.org/2000/svg'/>")).toMatchObject({ code: "IMAGE_REFUSED" });
    expect((await refused("%PDF-1.4")).message).toContain("a PDF");
    expect((await refused(samples["JPEG"]!.subarray(0, 500))).message).toContain("damaged");
    expect((await refused("")).message).toContain("empty");
    // The service closes the connection before all of it has come: a client may be writing still.
    const large = await upload(Buffer.alloc(15 * 1024 * 1024 + 1, 1)).then(
      ({ status }) => status,
      ({ code }: NodeJS.ErrnoException) => code,
    );
    expect([413, "EPIPE", "ECONNRESET"]).toContain(large);
    for (const name of ["../soup.jpg", "/etc/soup.jpg", "a\\b.jpg", "a//b.jpg", "./a.jpg", `${"a".repeat(201)}`]) {
      const answer = await upload(samples["JPEG"]!, `${url}?file=${encodeURIComponent(name)}`);
      expect(answer.status, name).toBe(400);
    }
  });

  it("are taken from who may write for the publisher alone", async () => {
    const other = await app.tokenFor(publisher, ["READ_DRAFTS", "PUBLISH", "IMPORT", "ADMIN"]);
    expect((await upload(samples["JPEG"]!, url, other)).status).toBe(403);
    expect((await upload(samples["JPEG"]!, "/v1/publishers/nobody/images")).status).toBe(403);
    const operator = await app.tokenFor(null, ["WRITE"]);
    expect((await upload(samples["JPEG"]!, "/v1/publishers/nobody/images", operator)).status).toBe(404);
    expect((await request(app.app.server).post(url).send(samples["JPEG"]!)).status).toBe(401);
  });

  it("that are not there are not found, whatever is asked for", async () => {
    const { body } = await upload(samples["JPEG"]!);
    const at = (hash: string, file: string, of = publisher) => `/images/${of}/${hash}/${file}`;
    const paths = [
      at(body.hash, "320.png"),
      at(body.hash, "0.jpg"),
      at(body.hash, "321.jpg"),
      at(body.hash, "320.jpg.html"),
      at(body.hash, "320"),
      at("0".repeat(64), "320.jpg"),
      at("%00", "320.jpg"),
      at(body.hash, "320.jpg", "nobody"),
      at(body.hash, "320.jpg", "%00"),
    ];
    for (const path of paths) {
      const answer = await get(path);
      expect([path, answer.status, answer.headers["content-type"]]).toEqual([
        path,
        404,
        "application/problem+json; charset=utf-8",
      ]);
    }
  });

  it("are in the audit trail, once for each that was new", async () => {
    const { items } = await app.deps.data.auditTrail.page(publisher, {
      first: 100,
      after: null,
      last: null,
      before: null,
    });
    const uploads = items.filter(({ item }) => item.action === "UPLOAD_IMAGE");
    expect(uploads.map(({ item }) => item.subject)).toContain("photos/soup.jpg");
    expect(uploads.every(({ item }) => item.subjectKind === "IMAGE")).toBe(true);
  });
});

const bytesOf = ({ body }: { readonly body: unknown }): Buffer => body as Buffer;

function inBytes(answer: Response, done: (error: Error | null, body: Buffer) => void): void {
  const pieces: Buffer[] = [];
  answer.on("data", (piece: Buffer) => pieces.push(piece));
  answer.on("end", () => done(null, Buffer.concat(pieces)));
}
