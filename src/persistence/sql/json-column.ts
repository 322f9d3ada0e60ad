import type { Prisma } from "../generated/client.js";

/** A JSON column that only this folder writes, always in the shape of a domain type. */
export const fromJson = <T>(value: Prisma.JsonValue): T => value as unknown as T;

export const toJson = (value: object): Prisma.InputJsonValue => value as unknown as Prisma.InputJsonValue;
