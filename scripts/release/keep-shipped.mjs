import { readFile, rm } from "node:fs/promises";

/**
 * Removes from `node_modules` what only the making of the program needs. `npm ci --omit=dev` leaves those that some package would also
 * take if they were there (Prisma's tools, TypeScript); who installs the package does not get them either.
 */
const { packages } = JSON.parse(await readFile("package-lock.json", "utf8"));
const unneeded = Object.entries(packages).filter(
  ([folder, { dev, devOptional }]) => folder !== "" && (dev || devOptional),
);
await Promise.all(unneeded.map(([folder]) => rm(folder, { recursive: true, force: true })));
