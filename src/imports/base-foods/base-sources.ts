import type { Source } from "../../domain/model/source.js";

const published =
  (title: string) =>
  (section: string): Source => ({ kind: "PUBLISHED", title, section });

/** What nobody looked up: names, kinds, weights of things as sold. */
export const fromMemory = (section: string): Source => ({
  kind: "COMMON_PRACTICE",
  title: "Base foods of Prepwright, written down from memory",
  section,
});

export const storageSource = published(
  "USDA FSIS home food storage dataset (open data; with Cornell University and the Food Marketing Institute), version 128 of 2018",
);

export const glutenSource = published("21 CFR 101.91 (US FDA)");
