// @ts-nocheck
import type { Path } from "../../domain/problem.js";
import { jsonSchemas } from "./document-kinds.js";
import type { DocumentKind } from "./document-kinds.js";

interface Shape {
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly additionalProperties?: Shape | boolean;
  readonly items?: Shape;
  readonly anyOf?: readonly Shape[];
  readonly allOf?: readonly Shape[];
}

const branches = (shape: Shape): readonly Shape[] => [
  shape,
  ...[...(shape.anyOf ?? []), ...(shape.allOf ?? [])].flatMap(branches),
];

function below(shape: Shape, segment: string | number): readonly Shape[] {
  return branches(shape).flatMap(({ properties, additionalProperties, items }) => {
    if (typeof segment === "number") return items === undefined ? [] : [items];
    const named = properties?.[segment];
    if (named !== undefined) return [named];
    return typeof additionalProperties === "object" ? [additionalProperties] : [];
  });
}

const schemas = new Map<DocumentKind, Shape>();

function schemaOf(kind: DocumentKind): Shape {
  const known = schemas.get(kind);
  if (known !== undefined) return known;
  const schema = jsonSchemas()[kind] as Shape;
  schemas.set(kind, schema);
  return schema;
}

/** The keys a document of this kind may have at a path, read off its own schema. */
export function allowedKeys(kind: DocumentKind, path: Path): readonly string[] {
  const root: readonly Shape[] = [schemaOf(kind)];
  const here = path.reduce((shapes, segment) => shapes.flatMap((shape) => below(shape, segment)), root);
  return [...new Set(here.flatMap(branches).flatMap(({ properties }) => Object.keys(properties ?? {})))];
}
