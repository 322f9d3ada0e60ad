import { buffer } from "node:stream/consumers";
import { expect, it } from "vitest";
import { fromBufferPromise } from "yauzl";
import { packsAlone } from "../../../src/domain/component/packs-alone.js";
import { readDocuments } from "../../../src/imports/documents/read-documents.js";
import { demo } from "../../graphql/open-test-app.js";
import { describeOnEmbedded } from "../../kit/databases.js";
import { exported, openFull, publisher } from "./archive-of-a-publisher.js";

describeOnEmbedded("an archive of drafts that were saved before their texts were kept", (open) => {
  it("has a document of its kind for each", async () => {
    const test = await openFull(open);
    const { deps } = test;
    const [food] = demo.foods;
    if (food === undefined) throw new Error("the demo has no food");
    const byNobody = { document: null, by: null };
    await deps.data.publisherPacks.saveDraft(publisher, packsAlone("carrot", food.packs), null, byNobody);
    await deps.data.publisherFoods.saveDraft(publisher, { ...food, slug: "own-food" }, null, byNobody);
    const zip = await fromBufferPromise(await exported(test), { lazyEntries: true });
    const kinds: string[] = [];
    for await (const entry of zip.eachEntry()) {
      const [, kind] = /^drafts\/(\w+)\/(?:carrot|own-food)\.yaml$/.exec(entry.fileName) ?? [];
      if (kind === undefined) continue;
      const { documents, problems } = readDocuments(
        String(await buffer(await zip.openReadStreamPromise(entry))),
        entry.fileName,
      );
      expect([problems, documents.map(({ document }) => document.kind)]).toEqual([[], [kind]]);
      kinds.push(kind);
    }
    expect(kinds.toSorted()).toEqual(["food", "packs"]);
    await test.close();
  });
});
