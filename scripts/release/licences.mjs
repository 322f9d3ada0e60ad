import { shippedPackages } from "./shipped-packages.mjs";

/** May go with a program under MIT: they ask for no more than their text and their notice. SPDX identifiers. */
const allowed = new Set([
  "0BSD",
  "Apache-2.0",
  "BlueOak-1.0.0",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "CC0-1.0",
  "ISC",
  "MIT",
  "Unlicense",
]);

/** Under the LGPL, and loaded as a library of its own that its user may replace: the decoders of pictures. */
const linked = /^@img\/sharp-libvips-[a-z0-9-]+$/;
const ofLinked = new Set(["LGPL-3.0-or-later"]);

/** Whether a package may be installed beside the program; part of one of its files it may be only where `isAllowed` says so. */
export const mayShip = ({ name, license, how }) =>
  isAllowed(license) || (how === "installed" && linked.test(name) && ofLinked.has(license));

/** Whether an SPDX expression (annex D of SPDX 2.3) can be met: of OR one side, of AND both. Null, and anything unknown, cannot. */
export function isAllowed(expression) {
  if (expression === null) return false;
  const tokens = expression.match(/[()]|[^\s()]+/g) ?? [];
  let at = 0;
  const term = () => {
    const token = tokens[at++];
    if (token !== "(") return token !== undefined && allowed.has(token);
    const inside = either();
    return tokens[at++] === ")" && inside;
  };
  const both = () => {
    let met = term();
    while (tokens[at] === "AND") {
      at += 1;
      met = term() && met;
    }
    return met;
  };
  const either = () => {
    let met = both();
    while (tokens[at] === "OR") {
      at += 1;
      met = both() || met;
    }
    return met;
  };
  const met = either();
  return at === tokens.length && met;
}

/** Fails where a shipped package has a licence that is not on the list, or none. */
if (process.argv[1] === import.meta.filename) {
  const shipped = await shippedPackages();
  const refused = shipped.filter((each) => !mayShip(each));
  for (const { name, version, license } of refused)
    console.error(`${name} ${version}: ${license ?? "no licence named"}`);
  const counts = new Map();
  for (const { license } of shipped) counts.set(license, (counts.get(license) ?? 0) + 1);
  const kinds = [...counts].map(([license, count]) => `${count} ${license}`).join(", ");
  console.log(`${shipped.length} shipped packages, ${refused.length} with a licence that is not on the list. ${kinds}`);
  process.exitCode = refused.length > 0 ? 1 : 0;
}
