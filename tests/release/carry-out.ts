import { cpSync, mkdirSync, readFileSync, statSync } from "node:fs";
import { basename, join } from "node:path";
import { run } from "./run.js";

/** One instruction of a Dockerfile: its name, and the rest of its line. */
interface Instruction {
  readonly name: string;
  readonly words: string;
}

/** What the last stage leaves behind. */
export interface Image {
  /** The file system of the stage, as far as its instructions made it. */
  readonly root: string;
  readonly folder: string;
  readonly env: Readonly<Record<string, string>>;
  readonly user: string | null;
  readonly command: readonly string[];
  readonly healthCheck: readonly string[];
  readonly bases: readonly string[];
}

const instructionsOf = (text: string): readonly Instruction[] =>
  text
    .replaceAll("\\\n", " ")
    .split("\n")
    .flatMap((line) => {
      const [, name, words] = /^([A-Z]+) (.*)$/.exec(line) ?? [];
      return name === undefined || words === undefined ? [] : [{ name, words }];
    });

interface Stage {
  readonly root: string;
  folder: string;
  env: Record<string, string>;
  user: string | null;
  command: readonly string[];
  healthCheck: readonly string[];
}

/**
 * Carries out a Dockerfile without an engine: each stage is a folder, COPY copies into it and RUN runs there, with the Node of this
 * machine. Only the instructions that ours uses are known; any other is an error. `context` holds what `.dockerignore` lets in.
 */
export function carryOut(dockerfile: string, context: string, below: string): Image {
  const stages = new Map<string, Stage>();
  const bases: string[] = [];
  let stage: Stage | undefined;
  for (const { name, words } of instructionsOf(readFileSync(dockerfile, "utf8"))) {
    if (name === "FROM") {
      const [, base = "", alias] = /^(\S+)(?: AS (\S+))?$/.exec(words) ?? [];
      bases.push(base);
      const root = join(below, alias ?? "last");
      stage = { root, folder: "/", env: {}, user: null, command: [], healthCheck: [] };
      stages.set(alias ?? "last", stage);
      mkdirSync(root);
      continue;
    }
    if (stage === undefined) throw new Error("an instruction before FROM");
    const here = join(stage.root, stage.folder);
    if (name === "WORKDIR") {
      stage.folder = words;
      mkdirSync(join(stage.root, words), { recursive: true });
    } else if (name === "ENV") {
      for (const pair of words.split(" ")) stage.env[pair.split("=")[0] ?? ""] = pair.split("=")[1] ?? "";
    } else if (name === "COPY") {
      const [, from, paths = ""] = /^(?:--from=(\S+) )?(.*)$/.exec(words) ?? [];
      const source = from === undefined ? context : stages.get(from)?.root;
      if (source === undefined) throw new Error(`no stage ${from}`);
      const [target = "", ...sources] = paths.split(" ").toReversed();
      for (const each of sources) {
        const given = join(source, each);
        // As the engine does: the contents of a folder, and a file under its own name where the target is a folder.
        const to =
          statSync(given).isDirectory() || !target.endsWith("/")
            ? join(here, target)
            : join(here, target, basename(each));
        cpSync(given, to, { recursive: true });
      }
    } else if (name === "RUN") {
      run("sh", ["-c", words], { cwd: here, env: stage.env });
    } else if (name === "USER") stage.user = words;
    else if (name === "CMD") stage.command = JSON.parse(words) as string[];
    else if (name === "HEALTHCHECK") stage.healthCheck = JSON.parse(words.slice(words.indexOf("["))) as string[];
    else if (name !== "EXPOSE") throw new Error(`carrying out ${name} is not known here`);
  }
  if (stage === undefined) throw new Error("no stage");
  return { ...stage, bases };
}
