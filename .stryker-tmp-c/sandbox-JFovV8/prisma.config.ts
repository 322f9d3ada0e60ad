// @ts-nocheck
import { defineConfig } from "prisma/config";

/** For people who use the ordinary command line of Prisma; the program migrates its database itself at start. */
const url = process.env["DATABASE_URL"];

export default defineConfig({
  schema: "prisma/schema.prisma",
  migrations: { path: "prisma/migrations" },
  ...(url === undefined ? {} : { datasource: { url } }),
});
