/**
 * For people who use the ordinary command line of Prisma (`npm run prisma -- migrate status`); the program migrates its database
 * itself at start. No type is imported, because the package is in tools/prisma.
 */
const url = process.env["DATABASE_URL"];

export default {
  schema: "prisma/schema.prisma",
  migrations: { path: "prisma/migrations" },
  ...(url === undefined ? {} : { datasource: { url } }),
};
