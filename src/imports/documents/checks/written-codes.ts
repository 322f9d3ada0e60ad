import { z } from "zod";
import type { CodeListName } from "../../../domain/code-list-name.js";
import type { Path } from "../../../domain/problem.js";
import { codeFields } from "../schemas/code-schema.js";
import { documentSchemas, type DocumentKind } from "../document-kinds.js";

/** A code as it stands in a document. */
export interface WrittenCode {
  readonly list: CodeListName;
  readonly written: string;
  readonly path: Path;
  /** Whether the code is the key itself. */
  readonly at: "VALUE" | "KEY";
}

/** A step into a document: a key, every entry of a list, every value of a map, or its keys themselves. */
type Segment = string | typeof everyEntry | typeof everyValue | typeof everyKey;
const everyEntry = Symbol("every entry");
const everyValue = Symbol("every value");
const everyKey = Symbol("every key");

/** A field that takes a code, and the way to it. */
interface CodeField {
  readonly list: CodeListName;
  readonly way: readonly Segment[];
}

interface Shape {
  readonly list?: CodeListName;
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly additionalProperties?: Shape | boolean;
  readonly propertyNames?: Shape;
  readonly items?: Shape;
  readonly anyOf?: readonly Shape[];
  readonly allOf?: readonly Shape[];
}

function fieldsIn(shape: Shape, way: readonly Segment[]): readonly CodeField[] {
  const { list, properties = {}, additionalProperties, propertyNames, items, anyOf = [], allOf = [] } = shape;
  return [
    ...(list === undefined ? [] : [{ list, way }]),
    ...Object.entries(properties).flatMap(([key, inner]) => fieldsIn(inner, [...way, key])),
    ...(typeof additionalProperties === "object" ? fieldsIn(additionalProperties, [...way, everyValue]) : []),
    ...(propertyNames === undefined ? [] : fieldsIn(propertyNames, [...way, everyKey])),
    ...(items === undefined ? [] : fieldsIn(items, [...way, everyEntry])),
    ...[...anyOf, ...allOf].flatMap((inner) => fieldsIn(inner, way)),
  ];
}

/** The JSON Schema of a kind with nothing beside its shape but which list each code is of. */
const shapeOf = (kind: DocumentKind): Shape =>
  z.toJSONSchema(documentSchemas[kind], { io: "input", unrepresentable: "any", metadata: codeFields }) as Shape;

const fields = new Map<DocumentKind, readonly CodeField[]>();

/** Every field of a kind of document that takes a code, read off its schema. */
export function codeFieldsOf(kind: DocumentKind): readonly CodeField[] {
  const found = fields.get(kind) ?? fieldsIn(shapeOf(kind), []);
  fields.set(kind, found);
  return found;
}

/** The codes that a document has written, in the order of its schema. Values that are no text are left to the shape's check. */
export const writtenCodes = (kind: DocumentKind, document: unknown): readonly WrittenCode[] =>
  codeFieldsOf(kind).flatMap(({ list, way }) => codesAt(list, document, way, []));

function codesAt(list: CodeListName, value: unknown, way: readonly Segment[], path: Path): readonly WrittenCode[] {
  const [next, ...rest] = way;
  if (next === undefined) return typeof value === "string" ? [{ list, written: value, path, at: "VALUE" }] : [];
  if (typeof value !== "object" || value === null) return [];
  if (Array.isArray(value)) {
    if (next !== everyEntry) return [];
    return value.flatMap((entry: unknown, at) => codesAt(list, entry, rest, [...path, at]));
  }
  if (next === everyEntry) return [];
  if (next === everyKey)
    return Object.keys(value).map((written) => ({ list, written, path: [...path, written], at: "KEY" }));
  const entries: readonly (readonly [string, unknown])[] =
    next === everyValue
      ? Object.entries(value)
      : Object.hasOwn(value, next)
        ? [[next, (value as Readonly<Record<string, unknown>>)[next]]]
        : [];
  return entries.flatMap(([key, inner]) => codesAt(list, inner, rest, [...path, key]));
}
