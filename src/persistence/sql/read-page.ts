import { z } from "zod";
import { decodeCursor, encodeCursor } from "./cursor.js";
import type { Page, PageRequest } from "./page.js";
import { Prisma } from "../generated/client.js";
import type { Db } from "../database/session.js";

/** A column of the total order of a list; the last one is unique. */
export interface OrderKey {
  readonly column: Prisma.Sql;
  /** SQL type a cursor's text is read as. */
  readonly type: Prisma.Sql;
  readonly descending: boolean;
}

export interface PagedList<Row, Keys extends readonly string[]> {
  /** As many as `Keys` has. */
  readonly order: readonly OrderKey[];
  readonly keys: z.ZodType<Keys>;
  /** Tables that hold the order, and what narrows them. Nothing else is looked at before the page is cut. */
  readonly from: Prisma.Sql;
  readonly where: Prisma.Sql;
  /** Columns of a row, of the cut page k (k0, k1, …: the keys) and of what is joined to it then. */
  readonly columns: Prisma.Sql;
  readonly join: Prisma.Sql;
  keysOf(row: Row): Keys;
}

/** A time as a key of a cursor: exactly as this program writes it, in a year that a database knows. */
export const instantKey = z.string().refine((text) => {
  const time = new Date(text);
  return (
    /^[0-9]{4}-/.test(text) && !text.startsWith("0000") && !Number.isNaN(time.getTime()) && time.toISOString() === text
  );
});

type Direction = "forwards" | "backwards";

/**
 * A page by Relay's rules, in one statement; an item may hold more columns than `Row` names. It is read from the cursor on, along the order, so that rows inserted between two pages move
 * nothing. Exactly one of `first` and `last` is given.
 * @throws BadCursor
 */
export async function readPage<Row extends object, Keys extends readonly string[]>(
  db: Db,
  list: PagedList<Row, Keys>,
  { first, after, last, before }: PageRequest,
): Promise<Page<Row>> {
  const size = first ?? last;
  if (size === null || (first !== null && last !== null)) throw new RangeError("a page needs `first` or `last`");
  const direction: Direction = first === null ? "backwards" : "forwards";
  const from = after === null ? null : decodeCursor(after, list.keys);
  const to = before === null ? null : decodeCursor(before, list.keys);
  const behind = direction === "forwards" ? from : to;

  const inside = [
    list.where,
    ...(from === null ? [] : [beyond(list.order, from, "forwards")]),
    ...(to === null ? [] : [beyond(list.order, to, "backwards")]),
  ];
  // What lies behind the cursor includes its own row. The nearest one is asked for, because an index has that at hand.
  const anyBehind =
    behind === null
      ? Prisma.sql`FALSE`
      : Prisma.sql`(SELECT TRUE FROM ${list.from}
          WHERE ${list.where} AND ${beyond(list.order, behind, opposite(direction), "or at")}
          ORDER BY ${orderBy(list.order, opposite(direction))} LIMIT 1) IS NOT NULL`;
  const named = list.order.map(({ column }, index) => Prisma.sql`${column} AS ${keyName(index)}`);
  const again = list.order.map((key, index) => ({ ...key, column: Prisma.sql`r.${keyName(index)}` }));
  const rows = await db.$queryRaw<({ any_behind: boolean; found: boolean | null } & Row)[]>`
    SELECT b.any_behind, r.* FROM (SELECT ${anyBehind} AS any_behind) b LEFT JOIN (
      SELECT TRUE AS found, k.*, ${list.columns} FROM (
        SELECT ${Prisma.join(named, ", ")} FROM ${list.from} WHERE ${Prisma.join(inside, " AND ")}
        ORDER BY ${orderBy(list.order, direction)} LIMIT ${size + 1}
      ) k ${list.join}
    ) r ON TRUE ORDER BY ${orderBy(again, direction)}`;
  const found = rows.filter((row) => row.found === true);
  const kept = found.slice(0, size);
  const items = (direction === "forwards" ? kept : kept.toReversed()).map((item) => ({
    cursor: encodeCursor(list.keysOf(item)),
    item,
  }));
  const more = found.length > size;
  const less = rows[0]?.any_behind === true;
  return direction === "forwards"
    ? { items, hasNext: more, hasPrevious: less }
    : { items, hasNext: less, hasPrevious: more };
}

const keyName = (index: number): Prisma.Sql => Prisma.raw(`k${index}`);

const opposite = (direction: Direction): Direction => (direction === "forwards" ? "backwards" : "forwards");

/** Rows beyond these keys, or at them too. The outermost comparison is one an index can start from. */
function beyond(
  order: readonly OrderKey[],
  keys: readonly string[],
  direction: Direction,
  at: "only" | "or at" = "only",
): Prisma.Sql {
  const [key, ...rest] = order;
  const [value, ...values] = keys;
  if (key === undefined || value === undefined) throw new RangeError("a cursor has as many keys as the order");
  const upwards = key.descending === (direction === "backwards");
  const bound = Prisma.sql`${value}::${key.type}`;
  const strictly = Prisma.sql`${key.column} ${upwards ? Prisma.sql`>` : Prisma.sql`<`} ${bound}`;
  const atLeast = Prisma.sql`${key.column} ${upwards ? Prisma.sql`>=` : Prisma.sql`<=`} ${bound}`;
  if (rest.length === 0) return at === "only" ? strictly : atLeast;
  return Prisma.sql`(${atLeast} AND (${strictly} OR ${beyond(rest, values, direction, at)}))`;
}

function orderBy(order: readonly OrderKey[], direction: Direction): Prisma.Sql {
  const terms = order.map(({ column, descending }) =>
    descending === (direction === "forwards") ? Prisma.sql`${column} DESC` : Prisma.sql`${column} ASC`,
  );
  return Prisma.join(terms, ", ");
}
