import { readdir, readFile } from "node:fs/promises";
import path from "node:path";

/** Every document that the project shows or ships: its demo, its examples, and the blocks of its guides. */
export async function examples(): Promise<readonly { readonly name: string; readonly text: string }[]> {
  const folders = await Promise.all(
    ["seeds", "examples", "docs"].map((folder) => readdir(folder, { recursive: true })),
  );
  const [seeds = [], shown = [], docs = []] = folders;
  const names = [
    ...seeds.map((name) => path.join("seeds", name)),
    ...shown.map((name) => path.join("examples", name)),
    ...docs.map((name) => path.join("docs", name)),
    "README.md",
  ].filter((name) => /\.(yaml|md)$/.test(name));
  const found = await Promise.all(
    names.map(async (name) => {
      const text = await readFile(name, "utf8");
      const blocks = [...text.matchAll(/^```yaml\n(.*?)^```$/gms)].map(([, block = ""]) => block);
      return (name.endsWith(".md") ? blocks : [text])
        .filter((each) => /^kind: (food|component|plan)$/m.test(each))
        .map((each, at) => ({ name: at === 0 ? name : `${name}, ${at + 1}`, text: each }));
    }),
  );
  return found.flat().toSorted((a, b) => a.name.localeCompare(b.name));
}
