import { imageFormats, imageWidths, isImageFile } from "../../domain/model/image.js";
import { decoded } from "../../imports/images/decoder.js";
import { fileKind } from "../../imports/images/image-signature.js";
import type { KeptImage } from "../../persistence/images/image-data.js";
import type { Deps } from "../deps.js";
import { sha256 } from "./archive-entry.js";
import { fileNames, imageFileSchema, imageNamed } from "./archive-format.js";
import { BadArchive, parseFile, shaped, type OpenArchive } from "./open-archive.js";

type Format = KeptImage["format"];

/** Pictures with their names, one at a time; removed ones stay removed. How many can be had. @throws BadArchive */
export async function takeImages({ data }: Deps, archive: OpenArchive, publisher: string, by: string): Promise<number> {
  const taken = new Set<string>();
  let count = 0;
  for (const file of archive.names) {
    const hash = imageNamed(file);
    if (hash === null) continue;
    const { names, createdAt, removedAt, ...read } = shaped(
      file,
      imageFileSchema,
      parseFile(file, await archive.read(file)),
    );
    const image = { hash, ...read, createdAt: new Date(createdAt), createdBy: by };
    if (removedAt !== null) {
      await data.images.add(publisher, { ...image, files: [] });
      await data.images.remove(publisher, hash, new Date(removedAt));
      continue;
    }
    count += 1;
    await data.images.add(publisher, { ...image, files: await filesOf(archive, image) });
    for (const { name, updatedAt } of names) {
      if (taken.has(name) || !isImageFile(name))
        throw new BadArchive({ kind: "CONTENT", detail: "another picture has one of its names" }, file);
      taken.add(name);
      await data.images.name(publisher, name, image, new Date(updatedAt));
    }
  }
  return count;
}

/** The picture as it is kept, and in every width and format that readers may ask for. */
async function filesOf(archive: OpenArchive, image: Pick<KeptImage, "hash" | "format" | "width" | "height">) {
  const { hash, width: full, format: kept } = image;
  const wanted: readonly { readonly width: number; readonly format: Format }[] = [
    { width: 0, format: kept },
    ...imageWidths(image).flatMap((width) => imageFormats.map((format) => ({ width, format }))),
  ];
  const files: { readonly width: number; readonly format: Format; readonly bytes: Buffer }[] = [];
  for (const { width, format } of wanted) {
    const name = fileNames.imageFile(hash, width, format);
    const bytes = await archive.read(name);
    if (width === 0 && sha256(bytes) !== hash) throw new BadArchive({ kind: "ALTERED" }, name);
    await checkPicture(name, bytes, format, width === 0 ? full : width);
    files.push({ width, format, bytes });
  }
  return files;
}

/** Nothing but a picture of that format and width is ever handed out as one. @throws BadArchive */
async function checkPicture(name: string, bytes: Buffer, format: Format, width: number): Promise<void> {
  const wrong = (detail: string): BadArchive => new BadArchive({ kind: "CONTENT", detail }, name);
  if (fileKind(bytes) !== format) throw wrong(`it is not a picture in the format ${format}`);
  const head = await decoded(bytes)
    .metadata()
    .catch(() => {
      throw wrong("the picture is damaged");
    });
  if (head.width !== width) throw wrong(`the picture is ${String(head.width)} pixels wide, not ${String(width)}`);
}
