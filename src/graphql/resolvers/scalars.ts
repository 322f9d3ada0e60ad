import { GraphQLError, GraphQLScalarType, Kind, type ValueNode } from "graphql";

/** Both are profiles of ISO 8601 that it defines: `date-time` and `full-date`. */
const instantsAndDays = "https://www.rfc-editor.org/rfc/rfc3339#section-5.6";
const instantShape = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,9})?)?(Z|[+-]\d{2}:\d{2})$/;
const dayShape = /^\d{4}-\d{2}-\d{2}$/;

function refuse(what: string, node?: ValueNode): never {
  throw new GraphQLError(`Expected ${what}.`, node ? { nodes: node } : {});
}

/** A calendar that rolls over would read 30 February as 2 March. */
const isDay = (text: string): boolean => {
  const read = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(read.getTime()) && read.toISOString().startsWith(text);
};

function readInstant(value: unknown, node?: ValueNode): string {
  const fits =
    typeof value === "string" &&
    instantShape.test(value) &&
    isDay(value.slice(0, 10)) &&
    !Number.isNaN(new Date(value).getTime());
  return fits ? new Date(value).toISOString() : refuse("an instant such as 2026-03-01T09:30:00Z", node);
}

function readDay(value: unknown, node?: ValueNode): string {
  const fits = typeof value === "string" && dayShape.test(value) && isDay(value);
  return fits ? value : refuse("a day such as 2026-03-01", node);
}

function readQuantity(value: unknown, node?: ValueNode): string {
  // Six decimals are what an amount may have; a double such as 1/3 has more than anybody wrote.
  if (typeof value === "number" && Number.isFinite(value)) return String(Number(value.toFixed(6)));
  if (typeof value === "string" && value.length <= 40) return value;
  return refuse("an amount such as 500, 0.75 or 1/3", node);
}

const textOf = (node: ValueNode): string | null => (node.kind === Kind.STRING ? node.value : null);

export const dateTimeScalar = new GraphQLScalarType<string, string>({
  name: "DateTime",
  specifiedByURL: instantsAndDays,
  description: "A point in time: an ISO 8601 instant, such as `2026-03-01T09:30:00Z`. Answers are in UTC.",
  serialize: (value) => (value instanceof Date ? value.toISOString() : readInstant(value)),
  parseValue: (value) => readInstant(value),
  parseLiteral: (node) => readInstant(textOf(node), node),
});

export const dateScalar = new GraphQLScalarType<string, string>({
  name: "Date",
  specifiedByURL: instantsAndDays,
  description: "A calendar day: ISO 8601, such as `2026-03-01`.",
  serialize: (value) => readDay(value),
  parseValue: (value) => readDay(value),
  parseLiteral: (node) => readDay(textOf(node), node),
});

/** Kept as text, so that a third stays a third until the domain reads it. */
export const quantityScalar = new GraphQLScalarType<string, string>({
  name: "Quantity",
  description:
    'An amount somebody writes: a number, or the text of one, such as `500`, `0.75`, `"1/3"` or `"1 1/2"`.' +
    " Never negative; a number is read with six decimals.",
  serialize: (value) => readQuantity(value),
  parseValue: (value) => readQuantity(value),
  parseLiteral: (node) =>
    node.kind === Kind.INT || node.kind === Kind.FLOAT
      ? readQuantity(node.value, node)
      : readQuantity(textOf(node), node),
});
