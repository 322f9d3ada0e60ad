import { randomUUID } from "node:crypto";
import { link, readFile, unlink, writeFile } from "node:fs/promises";
import { hostname } from "node:os";
import { join } from "node:path";
import { z } from "zod";
import { EmbeddedDatabaseBusy } from "../errors.js";
import { hasCode } from "./has-code.js";

interface FolderLock {
  release(): Promise<void>;
}

const holderSchema = z.object({
  pid: z.number().int().positive(),
  host: z.string(),
  /** When the process began, in ticks since boot, and which boot: a process id is given out again. null: not known here. */
  born: z.string().nullable(),
  token: z.string(),
});

type Holder = z.infer<typeof holderSchema>;

/**
 * Takes the lock file of a folder. A lock whose process is gone (a crash, a reboot, a container that came back with the same
 * process id) is taken over.
 * @throws EmbeddedDatabaseBusy
 */
export async function lockFolder(folder: string): Promise<FolderLock> {
  const path = join(folder, "database.lock");
  const mine: Holder = { pid: process.pid, host: hostname(), born: await bornOf(process.pid), token: randomUUID() };
  const written = `${path}.${mine.token}`;
  await writeFile(written, `${JSON.stringify(mine)}\n`, { flag: "wx", mode: 0o600 });
  try {
    if (!(await linked(written, path))) await takeOver(written, path);
  } finally {
    await unlink(written);
  }
  return { release: () => release(path, mine.token) };
}

/** Linking is atomic and fails where there is a file: exactly one of several processes gets it. */
async function linked(written: string, path: string): Promise<boolean> {
  try {
    await link(written, path);
    return true;
  } catch (error) {
    if (hasCode(error, "EEXIST")) return false;
    throw error;
  }
}

/**
 * Two may find the same stale lock, and the slower one must not remove the faster one's new lock. So removing has a lock of
 * its own, held for a moment, under which the first one is looked at again.
 */
async function takeOver(written: string, path: string): Promise<void> {
  const guard = `${path}.takeover`;
  await refuseIfAlive(path, path);
  if (!(await linked(written, guard))) {
    await refuseIfAlive(guard, path);
    await unlinkIfThere(guard);
    if (!(await linked(written, guard))) throw new EmbeddedDatabaseBusy(path, justNow);
  }
  try {
    await refuseIfAlive(path, path);
    await unlinkIfThere(path);
    if (!(await linked(written, path))) throw new EmbeddedDatabaseBusy(path, justNow);
  } finally {
    await unlinkIfThere(guard);
  }
}

const justNow = "a process that started just now";

async function refuseIfAlive(held: string, path: string): Promise<void> {
  const holder = await readHolder(held);
  if (holder !== null && (await isAlive(holder))) {
    throw new EmbeddedDatabaseBusy(path, `process ${holder.pid} on ${holder.host}`);
  }
}

async function unlinkIfThere(path: string): Promise<void> {
  try {
    await unlink(path);
  } catch (error) {
    if (!hasCode(error, "ENOENT")) throw error;
  }
}

/** null: there is no lock file any more. A file nobody can read is nobody's lock we know of, so it counts as held. */
async function readHolder(path: string): Promise<Holder | null> {
  let text: string;
  try {
    text = await readFile(path, "utf8");
  } catch (error) {
    if (hasCode(error, "ENOENT")) return null;
    throw error;
  }
  const parsed = holderSchema.safeParse(parseJson(text));
  if (!parsed.success) throw new EmbeddedDatabaseBusy(path, "a process that left an unreadable lock");
  return parsed.data;
}

async function isAlive({ pid, host, born }: Holder): Promise<boolean> {
  // A folder shared between machines: nobody here can tell whether that process lives.
  if (host !== hostname()) return true;
  try {
    process.kill(pid, 0);
  } catch (error) {
    if (hasCode(error, "ESRCH")) return false;
    if (!hasCode(error, "EPERM")) throw error;
  }
  const now = await bornOf(pid);
  return born === null || now === null || born === now;
}

/** null where the system does not tell, that is anywhere but on Linux. */
async function bornOf(pid: number): Promise<string | null> {
  try {
    const [boot, stat] = await Promise.all([
      readFile("/proc/sys/kernel/random/boot_id", "utf8"),
      readFile(`/proc/${pid}/stat`, "utf8"),
    ]);
    // Field 22, counted after the name, which stands in brackets and may hold spaces.
    const started = stat.slice(stat.lastIndexOf(")") + 2).split(" ")[19];
    return started === undefined ? null : `${boot.trim()} ${started}`;
  } catch (error) {
    if (hasCode(error, "ENOENT", "EACCES")) return null;
    throw error;
  }
}

async function release(path: string, token: string): Promise<void> {
  const holder = await readHolder(path);
  if (holder?.token === token) await unlink(path);
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}
