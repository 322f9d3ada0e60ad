import { hash as hashOf } from "node:crypto";
import type { StoredImage } from "../../domain/model/image.js";
import { findPublisherId, publisherId } from "../access/publishers.js";
import type { Db, Session } from "../database/session.js";
import { inOrder } from "../sql/keys.js";
import { isStorable } from "../sql/storable-text.js";
import type { ImageData, ImageFileName, KeptImage, NewImage } from "./image-data.js";

/** Bytes of one stored piece: a row of megabytes would be read whole for a part of it. */
const pieceSize = 256 * 1024;

const columns = {
  ...{ hash: true, fileHash: true, format: true, width: true, height: true },
  ...{ placeholder: true, createdAt: true, createdBy: true, removedAt: true },
} as const;

const isHash = (text: string): boolean => /^[0-9a-f]{64}$/.test(text);

export function imageData(session: Session): ImageData {
  const { db } = session;
  /** Of a publisher that may not be there. */
  const of = async <T>(publisher: string, otherwise: T, read: (publisherId: string) => Promise<T>): Promise<T> => {
    const id = await findPublisherId(db, publisher);
    return id === null ? otherwise : read(id);
  };
  return {
    byFileHash: (publisher, fileHash) =>
      of<KeptImage | null>(publisher, null, (id) =>
        db.image.findFirst({ where: { publisherId: id, fileHash }, select: columns, orderBy: { createdAt: "asc" } }),
      ),
    byHash: (publisher, hash) =>
      of<KeptImage | null>(publisher, null, async (id) =>
        isHash(hash)
          ? db.image.findUnique({ where: { publisherId_hash: { publisherId: id, hash } }, select: columns })
          : null,
      ),
    byNames: (publisher, names) =>
      of<readonly (KeptImage | null)[]>(
        publisher,
        names.map(() => null),
        async (id) => {
          const found = await db.imageName.findMany({
            where: { publisherId: id, name: { in: names.filter(isStorable) } },
            select: { name: true, image: { select: columns } },
          });
          return inOrder(names, found, ({ name }) => name, String).map((each) => each?.image ?? null);
        },
      ),
    count: (publisher) => of(publisher, 0, (id) => db.image.count({ where: { publisherId: id, removedAt: null } })),
    add: (publisher, image) => session.transaction((inside) => add(inside, publisher, image)),
    name: (publisher, name, image, at) =>
      session.transaction(async (inside) => {
        const id = await publisherId(inside, publisher);
        const { hash } = image;
        await inside.imageName.upsert({
          where: { publisherId_name: { publisherId: id, name } },
          create: { publisherId: id, name, hash, updatedAt: at },
          update: { hash, updatedAt: at },
          select: { name: true },
        });
        await inside.$executeRaw`UPDATE publishers
          SET image = image || jsonb_build_object('stored', ${JSON.stringify(storedOf(image))}::jsonb)
          WHERE id = ${id}::uuid AND image ->> 'file' = ${name}`;
      }),
    remove: (publisher, hash, at) => session.transaction((inside) => remove(inside, publisher, hash, at)),
    removed: (publisher) =>
      of<readonly string[]>(publisher, [], async (id) => {
        const where = { publisherId: id, removedAt: { not: null } };
        return (await db.image.findMany({ where, select: { hash: true } })).map(({ hash }) => hash);
      }),
    file: (publisher, { hash, width, format }) =>
      of(publisher, null, async (id) =>
        isHash(hash)
          ? db.imageFile.findUnique({
              where: { publisherId_hash_width_format: { publisherId: id, hash, width, format } },
              select: { sha256: true, size: true },
            })
          : null,
      ),
    bytes: (publisher, name, from, to) =>
      of(publisher, new Uint8Array(), (id) => bytes(db, { publisherId: id, ...name }, from, to)),
  };
}

const storedOf = ({ hash, width, height, placeholder }: StoredImage): StoredImage => ({
  hash,
  width,
  height,
  placeholder,
});

async function add(db: Db, publisher: string, image: NewImage): Promise<void> {
  const id = await publisherId(db, publisher);
  const { files, ...row } = image;
  const key = { publisherId: id, hash: image.hash };
  const { count } = await db.image.createMany({ data: [{ publisherId: id, ...row }], skipDuplicates: true });
  if (count === 0) return;
  await db.imageFile.createMany({
    data: files.map(({ width, format, bytes }) => ({
      ...{ ...key, width, format, size: bytes.length },
      sha256: hashOf("sha256", bytes),
    })),
  });
  for (const pieces of together(files.flatMap(piecesOf))) {
    await db.imagePiece.createMany({ data: pieces.map((piece) => ({ ...key, ...piece })) });
  }
}

type Piece = Omit<ImageFileName, "hash"> & { readonly position: number; readonly bytes: Uint8Array<ArrayBuffer> };

const piecesOf = ({ width, format, bytes }: NewImage["files"][number]): readonly Piece[] =>
  Array.from({ length: Math.ceil(bytes.length / pieceSize) }, (_, position) => ({
    ...{ width, format, position },
    bytes: Uint8Array.from(bytes.subarray(position * pieceSize, (position + 1) * pieceSize)),
  }));

/** Pieces that one statement stores: many small ones at once, and never more than a few large ones, which stand in it twice as long. */
function together(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const groups: Piece[][] = [];
  let size = 0;
  for (const piece of pieces) {
    const last = groups.at(-1);
    if (last === undefined || size + piece.bytes.length > 4 * pieceSize) {
      groups.push([piece]);
      size = piece.bytes.length;
    } else {
      last.push(piece);
      size += piece.bytes.length;
    }
  }
  return groups;
}

async function remove(db: Db, publisher: string, hash: string, at: Date): Promise<boolean> {
  const id = await publisherId(db, publisher);
  const key = { publisherId: id, hash };
  if (!isHash(hash)) return false;
  const { count } = await db.image.updateMany({ where: { ...key, removedAt: null }, data: { removedAt: at } });
  if (count === 0) return false;
  await db.imageName.deleteMany({ where: key });
  await db.imagePiece.deleteMany({ where: key });
  await db.imageFile.deleteMany({ where: key });
  await db.$executeRaw`UPDATE publishers SET image = image - 'stored'
    WHERE id = ${id}::uuid AND image -> 'stored' ->> 'hash' = ${hash}`;
  return true;
}

async function bytes(
  db: Db,
  key: ImageFileName & { readonly publisherId: string },
  from: number,
  to: number,
): Promise<Uint8Array> {
  const first = Math.floor(from / pieceSize);
  const pieces = await db.imagePiece.findMany({
    where: { ...key, position: { gte: first, lte: Math.floor(to / pieceSize) } },
    orderBy: { position: "asc" },
    select: { bytes: true },
  });
  const start = first * pieceSize;
  return Buffer.concat(pieces.map((piece) => piece.bytes)).subarray(from - start, to + 1 - start);
}
