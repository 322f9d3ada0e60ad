import { afterAll, beforeAll, expect, it } from "vitest";
import type { TestApp } from "../../graphql/open-test-app.js";
import { describeOnEmbedded } from "../../kit/databases.js";
import { planText } from "../../kit/plan-writer.js";
import { sampleImages } from "../../kit/sample-images.js";
import { exportPublisher } from "../../../src/services/archive/export-publisher.js";
import { saveDocuments } from "../../../src/services/drafts/save-documents.js";
import { receiveImage } from "../../../src/services/images/receive-image.js";
import { publishDraft } from "../../../src/services/plans/publish-draft.js";
import { schedulePublication } from "../../../src/services/schedule/schedule-plan.js";
import { unpacked } from "./archive-files.js";
import { imported, once, openEmpty, program, publisher } from "./archive-of-a-publisher.js";

describeOnEmbedded("an export while somebody publishes", (open) => {
  let here: TestApp;
  let there: TestApp;
  const slug = "salad-week";
  beforeAll(async () => {
    here = await openEmpty(open);
    there = await openEmpty(open);
    await publishAnew(0);
  });
  afterAll(() => Promise.all([here.close(), there.close()]));

  /** A revision with a picture that nobody has seen, and its next publication, which waits and names that revision. */
  async function publishAnew(number: number): Promise<void> {
    const { deps } = here;
    const file = `photos/${String(number)}.png`;
    const { PNG } = await sampleImages(96 + number, 72);
    expect((await receiveImage(deps, program, { publisher, file, bytes: once(PNG!) })).ok).toBe(true);
    const [version = null] = await deps.data.drafts.versions([{ kind: "PLAN", publisher, slug }]);
    const text = `${planText(slug, `Number ${String(number)}`)}image: { file: ${file}, alt: A salad }\n`;
    const expected = version === null ? [] : [{ kind: "PLAN", slug, version } as const];
    const saved = await saveDocuments(deps, program, { publisher, texts: [{ name: "plan.yaml", text }], expected });
    expect(saved).toMatchObject({ ok: true });
    const expectedVersion = (version ?? 0) + 1;
    expect(await publishDraft(deps, program, { publisher, slug, expectedVersion })).toMatchObject({ ok: true });
    const at = { at: "2026-06-01T06:00", zone: "Europe/Berlin" };
    expect(await schedulePublication(deps, program, { publisher, slug, expectedVersion, ...at })).toMatchObject({
      ok: true,
    });
  }

  it("holds every revision and picture that something in it names, whenever that happens", async () => {
    const moments = ["scheduled", "revisions", "images"] as const;
    for (const [number, moment] of moments.entries()) {
      // The real data; once it has answered at this moment of the export, somebody publishes.
      const { archives } = here.deps.data;
      let isDone = false;
      const then = async <T>(answer: T): Promise<T> => {
        if (!isDone) {
          isDone = true;
          await publishAnew(number + 1);
        }
        return answer;
      };
      const watched = {
        ...archives,
        [moment]: async (...asked: readonly unknown[]) =>
          then(await (archives[moment] as (...given: readonly unknown[]) => Promise<unknown>)(...asked)),
      };
      const deps = { ...here.deps, data: { ...here.deps.data, archives: watched } };
      const made = await exportPublisher(deps, program, publisher);
      if (!made.ok) throw new Error(JSON.stringify(made.problems));
      const pieces: Uint8Array[] = [];
      for await (const piece of made.value.bytes) pieces.push(piece);
      expect([moment, isDone]).toEqual([moment, true]);
      const zip = Buffer.concat(pieces);
      expect([moment, await imported(there, zip, true)]).toMatchObject([moment, { ok: true }]);
      const files = await unpacked(zip);
      const shown = [...files].flatMap(([name, bytes]) =>
        name.startsWith("plans/") || name.startsWith("scheduled/")
          ? [...String(bytes).matchAll(/"hash":"([0-9a-f]{64})"/g)].map(([, hash]) => `images/${String(hash)}.json`)
          : [],
      );
      expect([moment, shown.filter((name) => !files.has(name))]).toEqual([moment, []]);
    }
  });
});
