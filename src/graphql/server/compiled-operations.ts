import {
  BREAK,
  getVariableValues,
  GraphQLError,
  Kind,
  NoFragmentCyclesRule,
  NoSchemaIntrospectionCustomRule,
  parse,
  specifiedRules,
  validate,
  visit,
  type DocumentNode,
  type GraphQLSchema,
  type OperationDefinitionNode,
  type OperationTypeNode,
  type ValidationRule,
} from "graphql";
import { BoundedCache, type CacheBounds } from "../../domain/bounded-cache.js";
import { nestingFault } from "../limits/nesting.js";
import { documentLimits, documentLimitsRule } from "../limits/document-limits.js";
import { introspectionLimitsRule } from "../limits/introspection-limits.js";
import { introspectionMeter, type IntrospectionMeter } from "../limits/introspection-size.js";
import { costWith, operationCost } from "../limits/operation-cost.js";

import { plansNamedIn } from "../limits/plans-named.js";
import type { NamedPlan } from "../../services/usage/request-counts.js";

type Given = Readonly<Record<string, unknown>>;

/** An operation of a document that was read, checked and found good: what can be known of it before it is asked. */
export interface CompiledOperation {
  /** Tells it from all others of this process. */
  readonly id: number;
  /** Where it stands in its document. */
  readonly node: OperationDefinitionNode;
  /** null: it has none. */
  readonly name: string | null;
  readonly kind: OperationTypeNode;
  /** Tells what is asked where that is no more of the schema than the standard query asks; null: it is something else. */
  readonly aboutSchema: string | null;
  /** It asks for what is new. */
  readonly asksForChanges: boolean;
  /** The variables with defaults and as their types say, or what is wrong with them. */
  coerce(variables: Given): { readonly ok: true; readonly variables: Given } | Faulty;
  /** What it costs at most with variables as `coerce` returns them, in points. */
  cost(coerced: Given): number;
  /** The plans it asks for by name, with the same variables; of many the first. */
  plansNamed(coerced: Given): readonly NamedPlan[];
}

interface Faulty {
  readonly ok: false;
  readonly errors: readonly GraphQLError[];
}

/** Why a document is not run. */
type Stage = "PARSE" | "VALIDATION";

export type CompiledDocument =
  | { readonly ok: true; readonly document: DocumentNode; readonly operations: readonly CompiledOperation[] }
  | { readonly ok: false; readonly stage: Stage; readonly errors: readonly GraphQLError[] };

/** Documents by their text. */
interface CompiledOperations {
  compile(source: string): CompiledDocument;
}

interface CompileOptions {
  /** Whether documents may ask about the schema. */
  readonly introspection?: boolean;
  /** Sizes in characters. */
  readonly kept?: CacheBounds;
}

/** A document that is read takes some fifty bytes for each of its characters: with those that requests hold, under a hundred megabytes. */
export const keptDocuments = { max: 2_000, maxSize: 500_000, maxEntrySize: 64_000 };

/** Faults that are listed of one document or its variables. */
const maxErrors = 20;

/**
 * Reads and checks each document once and keeps the good ones, those that were asked for last. Refused ones are not kept: else
 * anybody could push the good ones out with nonsense.
 */
export function compiledOperations(
  schema: GraphQLSchema,
  { introspection = true, kept = keptDocuments }: CompileOptions = {},
): CompiledOperations {
  const rules = introspection ? specifiedRules : [...specifiedRules, NoSchemaIntrospectionCustomRule];
  const known = new BoundedCache<CompiledDocument>("graphql-documents", kept);
  return {
    compile: (source) => {
      const found = known.get(source);
      if (found !== undefined) return found;
      const compiled = compile(schema, rules, source);
      if (compiled.ok) known.set(source, compiled, { size: source.length });
      return compiled;
    },
  };
}

function compile(schema: GraphQLSchema, rules: readonly ValidationRule[], source: string): CompiledDocument {
  const read = readDocument(source);
  if (read instanceof GraphQLError) return { ok: false, stage: "PARSE", errors: [read] };
  const introspection = introspectionMeter(schema, read);
  const errors = faultsOf(schema, read, rules, introspection);
  if (errors.length > 0) return { ok: false, stage: "VALIDATION", errors };
  const operations = read.definitions.filter((definition) => definition.kind === Kind.OPERATION_DEFINITION);
  const changes = hasField(read, "changes");
  return {
    ok: true,
    document: read,
    operations: operations.map((operation) => compileOperation(schema, read, operation, introspection, changes)),
  };
}

/** In this order: some rules of the specification take long over documents that the ones before refuse. */
function faultsOf(
  schema: GraphQLSchema,
  document: DocumentNode,
  rules: readonly ValidationRule[],
  introspection: IntrospectionMeter,
): readonly GraphQLError[] {
  const wide = introspectionLimitsRule(introspection);
  for (const group of [[documentLimitsRule], [NoFragmentCyclesRule], rules, [wide]]) {
    const errors = validate(schema, document, group, { maxErrors });
    if (errors.length > 0) return errors;
  }
  return [];
}

function readDocument(source: string): DocumentNode | GraphQLError {
  const fault = nestingFault(source, documentLimits.tokens);
  if (fault !== null) return fault;
  try {
    return withoutTokens(parse(source, { maxTokens: documentLimits.tokens }));
  } catch (error) {
    if (error instanceof GraphQLError) return error;
    throw error;
  }
}

/**
 * Errors tell where something stands by its offset. The parser's tokens, each holding on to the next, are never asked for
 * again and are most of what a document that is kept takes.
 */
function withoutTokens(document: DocumentNode): DocumentNode {
  visit(document, {
    enter: ({ loc }) => {
      if (loc !== undefined) Object.assign(loc, { startToken: null, endToken: null });
    },
  });
  return document;
}

/** Whether a field of this name stands anywhere in the document. */
function hasField(document: DocumentNode, name: string): boolean {
  let found = false;
  visit(document, {
    Field: (field) => {
      found ||= field.name.value === name;
      return found ? BREAK : undefined;
    },
  });
  return found;
}

let compiledSoFar = 0;

function compileOperation(
  schema: GraphQLSchema,
  document: DocumentNode,
  operation: OperationDefinitionNode,
  introspection: IntrospectionMeter,
  asksForChanges: boolean,
): CompiledOperation {
  compiledSoFar += 1;
  const id = compiledSoFar;
  const definitions = operation.variableDefinitions ?? [];
  const cost = operationCost(schema, document, operation, introspection);
  return {
    id,
    node: operation,
    name: operation.name?.value ?? null,
    kind: operation.operation,
    aboutSchema: introspection.narrowQuestion(operation),
    asksForChanges,
    coerce: (given) => {
      const { errors, coerced } = getVariableValues(schema, definitions, given, { maxErrors });
      return errors === undefined ? { ok: true, variables: coerced } : { ok: false, errors };
    },
    cost: (coerced) => costWith(cost, coerced),
    plansNamed: plansNamedIn(document, operation),
  };
}
