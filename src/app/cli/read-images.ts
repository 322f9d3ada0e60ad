import { hash } from "node:crypto";
import { readFile, realpath, stat } from "node:fs/promises";
import { dirname, join, sep } from "node:path";
import type { ImageUse } from "../../domain/model/image.js";
import type { Path, Problem } from "../../domain/problem.js";
import type { AnyDocument } from "../../imports/documents/document-kinds.js";
import { placedProblem } from "../../imports/documents/yaml/placed-problem.js";
import type { DocumentsRead, ReadDocument } from "../../imports/documents/read-documents.js";
import { fileKind } from "../../imports/images/image-signature.js";
import { hasCode } from "../../persistence/database/has-code.js";
import { largestImageFile } from "../../imports/images/image-limits.js";

/** A picture that documents name, as it lies beside them. */
export interface LocalImage {
  /** As documents name it. */
  readonly file: string;
  /** SHA-256, hex, of the file. */
  readonly fileHash: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

interface ImagesRead {
  readonly images: readonly LocalImage[];
  /** Named by documents and not beside them: the service may have them. Each as a problem at its place. */
  readonly missing: readonly Problem[];
  readonly problems: readonly Problem[];
}

interface UseAt {
  readonly path: Path;
  readonly use: ImageUse;
}

/** The pictures that a document names, and where. */
export function imageUsesIn(document: AnyDocument): readonly UseAt[] {
  const of = (path: Path, use: ImageUse | null | undefined): readonly UseAt[] => (use ? [{ path, use }] : []);
  switch (document.kind) {
    case "plan":
      return [
        ...of(["image"], document.image),
        ...document.meals.flatMap((meal, at) => of(["meals", at, "image"], meal.image)),
      ];
    case "component":
    case "publisher":
      return of(["image"], document.image);
    default:
      return [];
  }
}

/** Reads the pictures that documents name from the folders that the documents stand in, and from nowhere else. */
export async function readImages({ documents }: DocumentsRead): Promise<ImagesRead> {
  const images = new Map<string, LocalImage>();
  const missing: Problem[] = [];
  const problems: Problem[] = [];
  for (const read of documents) {
    for (const { path, use } of imageUsesIn(read.document)) {
      const at = [...path, "file"];
      const bytes = await readBeside(read.file, use.file);
      if (bytes === "MISSING") {
        missing.push(placed(read, { code: "UNKNOWN_IMAGE", path: at, image: use.file }));
      } else if (typeof bytes === "string" || "fault" in bytes) {
        const refused = typeof bytes === "string" ? outside : bytes;
        problems.push(placed(read, { code: "IMAGE_REFUSED", path: at, ...refused }));
      } else {
        const fileHash = hash("sha256", bytes);
        const known = images.get(use.file);
        // One name means one picture to the service, whatever folder it is read from.
        if (known === undefined) images.set(use.file, { file: use.file, fileHash, bytes });
        else if (known.fileHash !== fileHash)
          problems.push(placed(read, { code: "DUPLICATE", path: at, value: use.file }));
      }
    }
  }
  return { images: [...images.values()], missing, problems };
}

const placed = (read: ReadDocument, problem: Problem): Problem =>
  placedProblem({ file: read.file, ...read.place(problem.path, "VALUE"), path: problem.path, problem });

type Fault = Pick<Extract<Problem, { readonly code: "IMAGE_REFUSED" }>, "fault" | "found">;

const outside: Fault = { fault: "OTHER_FORMAT", found: "a link that leads out of the document's folder" };

/** The bytes of a file beside or below a document. OUTSIDE: a link leads it elsewhere. */
async function readBeside(
  document: string,
  file: string,
): Promise<Uint8Array<ArrayBuffer> | "MISSING" | "OUTSIDE" | Fault> {
  try {
    const folder = dirname(await realpath(document));
    const path = await realpath(join(folder, file));
    if (!path.startsWith(folder.endsWith(sep) ? folder : folder + sep)) return "OUTSIDE";
    const { size } = await stat(path);
    if (size > largestImageFile) return { fault: "TOO_MANY_BYTES", found: `${size} bytes` };
    const bytes = Uint8Array.from(await readFile(path));
    const kind = fileKind(bytes);
    if (bytes.length === 0) return { fault: "EMPTY", found: "nothing" };
    if (kind === null) return { fault: "NOT_AN_IMAGE", found: "bytes that are no picture" };
    return typeof kind === "object" ? { fault: "OTHER_FORMAT", found: kind.other } : bytes;
  } catch (error) {
    if (hasCode(error, "ENOENT", "ENOTDIR")) return "MISSING";
    throw error;
  }
}
