import { bundleOf } from "../../domain/plan/compile/plan-bundle.js";
import { withTranslations } from "../../domain/plan/translate/texts-of.js";
import type { Deps } from "../../services/deps.js";
import { problemText } from "../../exports/sentences/problem-text.js";
import { receiveImage } from "../../services/images/receive-image.js";
import { loadSeeds, type SeedsLoaded } from "../../services/drafts/load-seeds.js";
import type { DemoImage } from "./read-demo-images.js";
import { readShipped } from "./shipped-data.js";

/** Loads the demo that comes with the program, through the checks that every plan and every picture goes through. */
export async function seedDatabase(deps: Deps, root: string): Promise<SeedsLoaded> {
  const { publisher, foods, components, plans, translations, images } = await readShipped("demo", root);
  await deps.data.publishers.save(publisher);
  for (const image of images) await handIn(deps, publisher.slug, image);
  const bundles = plans.map((plan) => {
    const image = images.find((each) => each.plan === plan.slug)?.image;
    const pictured = image === undefined ? plan : { ...plan, image };
    return withTranslations(bundleOf(pictured, components, foods), translations);
  });
  const loaded = await loadSeeds(deps, { publisher, foods, bundles });
  if (!loaded.ok) throw new Error(`the demo data is invalid: ${loaded.problems.map(problemText).join(" ")}`);
  return loaded.value;
}

async function handIn(deps: Deps, publisher: string, { image: { file }, base64 }: DemoImage): Promise<void> {
  const caller = { actor: { kind: "PROGRAM", name: "demo" }, requestId: null } as const;
  const received = await receiveImage(deps, caller, {
    publisher,
    file,
    bytes: piecesOf(Buffer.from(base64, "base64")),
  });
  if (!received.ok) throw new Error(`the demo's ${file} is invalid: ${received.problems.map(problemText).join(" ")}`);
}

async function* piecesOf(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
  await Promise.resolve();
}
