import { createHash, randomUUID } from "node:crypto";
import type { FileTags, HandedIn, ImportFile, ImportFileData } from "./import-data.js";
import { isId } from "../sql/keys.js";
import type { Session } from "../database/session.js";
import { storable } from "../sql/storable-text.js";

/** Bytes of one stored piece. */
const pieceSize = 256 * 1024;

interface FileRow {
  readonly id: string;
  readonly feedId: string;
  readonly name: string;
  readonly sha256: string;
  readonly size: bigint;
  readonly receivedAt: Date;
  readonly etag: string | null;
  readonly lastModified: string | null;
  readonly mended: boolean;
  readonly handedInBy: string | null;
}

const noTags: FileTags = { etag: null, lastModified: null };

const fileOf = ({ feedId, size, ...row }: FileRow): ImportFile => ({ ...row, feed: feedId, size: Number(size) });

export function importFileData(session: Session): ImportFileData {
  const { db } = session;
  const newestOf = (feed: string): Promise<FileRow | null> =>
    db.importFile.findFirst({
      where: { feedId: feed, sha256: { not: "" }, mended: false },
      orderBy: [{ receivedAt: "desc" }, { id: "asc" }],
    });
  async function put(
    feed: string,
    name: string,
    bytes: AsyncIterable<Uint8Array>,
    receivedAt: Date,
    given: { readonly mended: boolean; readonly from: HandedIn | null; readonly tags: FileTags },
  ): Promise<ImportFile> {
    const { mended, from, tags } = given;
    const id = randomUUID();
    const hash = createHash("sha256");
    let size = 0;
    let position = 0;
    // The row comes last: pieces of a file that broke off belong to nothing, and go.
    await db.importFile.create({
      data: storable({
        id,
        feedId: feed,
        name,
        sha256: "",
        size: 0n,
        receivedAt,
        mended,
        handedInBy: from?.by ?? null,
      }),
      select: { id: true },
    });
    try {
      for await (const piece of inPieces(bytes)) {
        hash.update(piece);
        size += piece.length;
        await db.importFilePiece.create({ data: { fileId: id, position, bytes: piece }, select: { position: true } });
        position += 1;
      }
    } catch (error) {
      await db.importFile.delete({ where: { id } });
      throw error;
    }
    const sha256 = hash.digest("hex");
    const same = await db.importFile.findFirst({ where: { feedId: feed, sha256, mended } });
    if (same !== null) {
      await db.importFile.delete({ where: { id } });
      // What comes again behind another file is the newest again, and whoever brings it back answers for it as for any other.
      const comesAgain = !mended && (await newestOf(feed))?.id !== same.id;
      const handedInBy = comesAgain ? (from?.by ?? null) : from?.countsMore === true ? from.by : same.handedInBy;
      const data = storable({ ...tags, handedInBy, ...(comesAgain && { receivedAt }) });
      return fileOf(await db.importFile.update({ where: { id: same.id }, data }));
    }
    return fileOf(
      await db.importFile.update({ where: { id }, data: { sha256, size: BigInt(size), ...storable(tags) } }),
    );
  }
  return {
    put: (feed, name, bytes, receivedAt, from, tags = noTags) =>
      put(feed, name, bytes, receivedAt, { mended: false, from: from ?? null, tags }),
    putMended: (feed, name, bytes, receivedAt) =>
      put(feed, name, bytes, receivedAt, { mended: true, from: null, tags: noTags }),
    byId: async (id) => {
      const row = isId(id) ? await db.importFile.findUnique({ where: { id } }) : null;
      return row === null || row.sha256 === "" ? null : fileOf(row);
    },
    newest: async (feed) => {
      const row = await newestOf(feed);
      return row === null ? null : fileOf(row);
    },
    read: async function* (id) {
      for (let position = 0; ; position += 1) {
        const piece = await db.importFilePiece.findUnique({ where: { fileId_position: { fileId: id, position } } });
        if (piece === null) return;
        yield piece.bytes;
      }
    },
  };
}

/** The same bytes in pieces of one size, so that a slow upload does not become a thousand rows. */
async function* inPieces(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array<ArrayBuffer>> {
  let held: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of bytes) {
    for (let from = 0; from < chunk.length;) {
      const part = chunk.subarray(from, from + pieceSize - size);
      held.push(part);
      size += part.length;
      from += part.length;
      if (size < pieceSize) continue;
      yield Uint8Array.from(Buffer.concat(held));
      held = [];
      size = 0;
    }
  }
  if (size > 0) yield Uint8Array.from(Buffer.concat(held));
}
