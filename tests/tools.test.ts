import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";

interface Lock {
  readonly packages: Readonly<Record<string, { readonly version?: string; readonly resolved?: string }>>;
}

interface Package {
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
  readonly peerDependencies?: Readonly<Record<string, string>>;
}

const read = <T>(...path: readonly string[]): T => JSON.parse(readFileSync(join(...path), "utf8")) as T;
const named = (folder: string): Readonly<Record<string, string>> => {
  const { dependencies, devDependencies, peerDependencies } = read<Package>(folder, "package.json");
  return { ...dependencies, ...devDependencies, ...peerDependencies };
};

describe.each(readdirSync("tools"))("tools/%s", (tool) => {
  const folder = join("tools", tool);

  it("is locked, to versions and not to a registry", () => {
    const { packages } = read<Lock>(folder, "package-lock.json");
    const locked = Object.entries(packages).filter(([path]) => path !== "");
    expect(locked.length).toBeGreaterThan(0);
    expect(locked.filter(([, { version }]) => version === undefined)).toEqual([]);
    expect(locked.filter(([, { resolved }]) => resolved !== undefined)).toEqual([]);
    for (const name of Object.keys(named(folder))) expect(packages[`node_modules/${name}`]).toBeDefined();
  });

  it("names what the project names too in the same version", () => {
    const own = named(".");
    const shared = Object.entries(named(folder)).filter(([name]) => own[name] !== undefined);
    expect(shared).toEqual(shared.map(([name]) => [name, own[name]]));
  });

  it("is used by a script", () => {
    const scripts = Object.values(read<{ readonly scripts: Record<string, string> }>("package.json").scripts);
    const sources = execFileSync("git", ["ls-files", "-co", "--exclude-standard", "scripts"], { encoding: "utf8" })
      .split("\n")
      .filter((file) => file.endsWith(".mjs") && existsSync(file))
      .map((file) => readFileSync(file, "utf8"));
    const ways = [`tool-folder.mjs ${tool} `, `toolFolder("${tool}")`, `requireFrom("${tool}")`];
    expect([...scripts, ...sources].some((text) => ways.some((way) => text.includes(way)))).toBe(true);
  });
});

it("a program of no tool is refused with the words it wants", () => {
  const run =
    (...words: readonly string[]) =>
    () =>
      execFileSync(process.execPath, ["scripts/tool-folder.mjs", ...words], { stdio: "pipe" });
  expect(run()).toThrow(/usage: node scripts\/tool-folder.mjs NAME PROGRAM/);
  expect(run("nothing", "x")).toThrow(/there is no tools\/nothing/);
});
