import { Prisma } from "../generated/client.js";

/** A JSON column that only this folder writes, always in the shape of a domain type. */
export const fromJson = <T>(value: Prisma.JsonValue): T => value as unknown as T;

/** A column that may be empty. */
export const jsonOrNull = (value: object | null | undefined): Prisma.InputJsonValue | typeof Prisma.DbNull =>
  value ? toJson(value) : Prisma.DbNull;

export const toJson = (value: object): Prisma.InputJsonValue => value as unknown as Prisma.InputJsonValue;
