import { readFileSync } from "node:fs";
import { isEnumType, isInputObjectType, isInterfaceType, isObjectType } from "graphql";
import { expect, it } from "vitest";
import { createSchema } from "../../src/graphql/schema.js";

interface Deprecated {
  readonly name: string;
  readonly reason: string;
}

const deprecated = Object.values(createSchema().getTypeMap()).flatMap((type): readonly Deprecated[] => {
  if (type.name.startsWith("__")) return [];
  const members = isEnumType(type)
    ? type.getValues()
    : isObjectType(type) || isInterfaceType(type)
      ? Object.values(type.getFields()).flatMap((field) => [
          field,
          ...field.args.map((arg) => ({ ...arg, name: `${field.name}(${arg.name})` })),
        ])
      : isInputObjectType(type)
        ? Object.values(type.getFields())
        : [];
  return members.flatMap(({ name, deprecationReason }) =>
    deprecationReason ? [{ name: `${type.name}.${name}`, reason: deprecationReason }] : [],
  );
});

it("everything deprecated says since when and what to use, and stands in the page about it", () => {
  const rows = [...readFileSync("docs/deprecations.md", "utf8").matchAll(/^\| `([^`]+)` +\| (\d{4}-\d{2}-\d{2}) \|/gm)];
  expect(deprecated.length).toBeGreaterThan(2);
  for (const { name, reason } of deprecated) expect(reason, name).toMatch(/^Since \d{4}-\d{2}-\d{2}: .*\buse `/i);
  expect(rows.map(([, name, since]) => [name, since]).toSorted()).toEqual(
    deprecated.map(({ name, reason }) => [name, reason.slice("Since ".length, "Since 2026-11-30".length)]).toSorted(),
  );
});
