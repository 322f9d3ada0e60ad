import {
  __Schema,
  __Type,
  getNamedType,
  getNullableType,
  isEnumType,
  isListType,
  isObjectType,
  isWrappingType,
  Kind,
  type DocumentNode,
  type FieldNode,
  type GraphQLObjectType,
  type GraphQLResolveInfo,
  type GraphQLSchema,
  type OperationDefinitionNode,
  type SelectionSetNode,
} from "graphql";
import { memoize } from "../../domain/memoize.js";
import { fragmentsOf, selectedBy } from "./fragments.js";
import { isNarrowIntrospection, narrowQuestion } from "./narrow-introspection.js";

/** How much an answer about the schema holds, at most. */
interface IntrospectionSize {
  /** Members of all objects: what is looked up and written, one by one. */
  readonly entries: number;
  /** Of the answer as JSON. */
  readonly bytes: number;
}

/** The most that a document may ask about the schema, more than twice what the standard query is answered with. */
export const introspectionLimits = { entries: 40_000, bytes: 4_000_000 } as const;

/** What a question costs that asks for no more than the standard query does, however large the schema is. */
export const narrowIntrospectionPoints = 2_000;

/** Bytes that cost a point, beside the point of each entry. */
const bytesPerPoint = 32;

export interface IntrospectionMeter {
  /** The answer to a field `__schema` or `__type`. Infinity where it is far beyond what may be asked. */
  sizeOf(field: FieldNode): IntrospectionSize;
  /** It asks for nothing that the standard query does not ask for, and once: its answer is bounded by the schema. */
  isNarrow(field: FieldNode): boolean;
  /** A text for what an operation asks, the same for all that ask the same, if that is nothing but narrow; null: it is something else. */
  narrowQuestion(operation: OperationDefinitionNode): string | null;
  /** Points for answering it. */
  costOf(field: FieldNode): number;
}

const nothing: IntrospectionSize = { entries: 0, bytes: 0 };
const tooMuch: IntrospectionSize = { entries: Infinity, bytes: Infinity };

/** What an element of the schema answers to a field: a text of so many bytes, or other elements. */
type Member =
  | { readonly kind: "LEAF"; readonly bytes: number }
  | { readonly kind: "ELEMENTS"; readonly type: GraphQLObjectType; readonly elements: readonly object[] };

/**
 * Counts, before anything is run, what fields of a document tell of the schema: the elements are walked as graphql-js would walk them,
 * but each selection once for each element, however often it is met. Directives are taken not to leave anything out, deprecated
 * elements are counted, and of `__type` with a variable the largest type is.
 */
export function introspectionMeter(schema: GraphQLSchema, document: DocumentNode): IntrospectionMeter {
  const elements = elementsOf(schema);
  const fragments = fragmentsOf(document);
  const ofFields = new Map<FieldNode, IntrospectionSize>();
  const ofSets = new Map<SelectionSetNode, Map<object, IntrospectionSize>>();
  let visited = 0;

  const sizeOfSet = (set: SelectionSetNode, type: GraphQLObjectType, element: object): IntrospectionSize => {
    const known = ofSets.get(set) ?? new Map<object, IntrospectionSize>();
    ofSets.set(set, known);
    const found = known.get(element);
    if (found !== undefined) return found;
    let entries = 0;
    let bytes = 2;
    for (const selection of set.selections) {
      visited += 1;
      if (visited > introspectionLimits.entries) return tooMuch;
      if (selection.kind === Kind.FIELD) {
        const below = sizeOfField(selection, type, element);
        entries += 1 + below.entries;
        bytes += nameBytes(selection) + below.bytes;
        continue;
      }
      const inside = selectedBy(selection, fragments);
      const spread = inside ? sizeOfSet(inside, type, element) : nothing;
      entries += spread.entries;
      bytes += spread.bytes;
    }
    const size = { entries, bytes };
    known.set(element, size);
    return size;
  };

  const sizeOfField = (field: FieldNode, type: GraphQLObjectType, element: object): IntrospectionSize => {
    const name = field.name.value;
    if (name === "__typename") return { entries: 0, bytes: type.name.length + 2 };
    const member = elements.member(type, element, name);
    if (member.kind === "LEAF" || field.selectionSet === undefined) {
      return { entries: 0, bytes: member.kind === "LEAF" ? member.bytes : 0 };
    }
    let entries = 0;
    let bytes = 4;
    for (const each of member.elements) {
      const size = sizeOfSet(field.selectionSet, member.type, each);
      entries += size.entries;
      bytes += 1 + size.bytes;
    }
    return { entries, bytes };
  };

  const measured = (field: FieldNode): IntrospectionSize => {
    const { selectionSet } = field;
    if (selectionSet === undefined) return nothing;
    const [type, asked] = field.name.value === "__schema" ? [__Schema, [schema]] : [__Type, typesAsked(schema, field)];
    const sizes = asked.map((element) => sizeOfSet(selectionSet, type, element));
    return {
      entries: 1 + Math.max(0, ...sizes.map(({ entries }) => entries)),
      bytes: nameBytes(field) + Math.max(4, ...sizes.map(({ bytes }) => bytes)),
    };
  };

  const sizeOf = (field: FieldNode): IntrospectionSize => {
    const known = ofFields.get(field) ?? measured(field);
    ofFields.set(field, known);
    return known;
  };
  const isNarrow = (field: FieldNode): boolean => isNarrowIntrospection(field, fragments);
  return {
    sizeOf,
    isNarrow,
    narrowQuestion: (operation) => narrowQuestion(operation, fragments),
    costOf: (field) => {
      const { entries, bytes } = sizeOf(field);
      const counted = entries + Math.ceil(bytes / bytesPerPoint);
      return isNarrow(field) ? Math.min(counted, narrowIntrospectionPoints) : counted;
    },
  };
}

/** `"name":` and a comma. */
const nameBytes = ({ alias, name }: FieldNode): number => (alias ?? name).value.length + 4;

/** The type that is named, or every one where a variable names it. */
function typesAsked(schema: GraphQLSchema, field: FieldNode): readonly object[] {
  const value = field.arguments?.find(({ name }) => name.value === "name")?.value;
  if (value?.kind !== Kind.STRING) return Object.values(schema.getTypeMap());
  const type = schema.getType(value.value);
  return type === undefined ? [] : [type];
}

interface Elements {
  member(type: GraphQLObjectType, element: object, name: string): Member;
}

/** What the elements of a schema say, found out once: there are as many as the schema has. */
const elementsOf = memoize((schema: GraphQLSchema): Elements => {
  const info = { schema } as GraphQLResolveInfo;
  const members = new WeakMap<object, Map<string, Member>>();
  const wrapped = new Map<string, object>();
  // `[Plan!]!` is another object in each field that has it.
  const oneOf = (element: object): object => {
    if (!isWrappingType(element)) return element;
    const text = String(element);
    const first = wrapped.get(text) ?? element;
    wrapped.set(text, first);
    return first;
  };

  const read = (type: GraphQLObjectType, element: object, name: string): Member => {
    const field = type.getFields()[name];
    if (field === undefined) throw new Error(`${type.name} has no ${name}`);
    const value: unknown = field.resolve
      ? field.resolve(element, { includeDeprecated: true }, undefined, info)
      : (element as Readonly<Record<string, unknown>>)[name];
    const of = getNamedType(field.type);
    const values = Array.isArray(value)
      ? (value as readonly unknown[])
      : value === null || value === undefined
        ? []
        : [value];
    if (isObjectType(of)) {
      return { kind: "ELEMENTS", type: of, elements: values.map((each) => oneOf(each as object)) };
    }
    const written = values.map((each) => JSON.stringify(isEnumType(of) ? of.serialize(each) : each));
    const list = isListType(getNullableType(field.type)) ? 2 + written.length : 4;
    return {
      kind: "LEAF",
      bytes: Math.max(list, Buffer.byteLength(written.join("")) + (Array.isArray(value) ? list : 0)),
    };
  };

  return {
    member: (type, element, name) => {
      const ofElement = members.get(element) ?? new Map<string, Member>();
      members.set(element, ofElement);
      const found = ofElement.get(name) ?? read(type, element, name);
      ofElement.set(name, found);
      return found;
    },
  };
});
