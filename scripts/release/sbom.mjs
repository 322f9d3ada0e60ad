import { randomUUID } from "node:crypto";
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { requireFrom } from "../tool-folder.mjs";
import { root, shippedPackages } from "./shipped-packages.mjs";

const { Spec, Validation } = requireFrom("sbom")("@cyclonedx/cyclonedx-library");

/**
 * Writes `reports/prepwright-VERSION.cdx.json`: every package that users get, in CycloneDX 1.5, held to the JSON schema of that
 * format as @cyclonedx/cyclonedx-library carries it. Not `npm sbom`: with --omit=dev, npm 11 leaves out what the program and its
 * tools have in common, which is a third of what is installed, and it cannot know what was bundled.
 */
const { name, version, license } = JSON.parse(await readFile(join(root, "package.json"), "utf8"));
const { packages } = JSON.parse(await readFile(join(root, "package-lock.json"), "utf8"));
const shipped = await shippedPackages();

const purlOf = (each) => `pkg:npm/${each.name.replace("@", "%40")}@${each.version}`;
const refOf = (each) => `${purlOf(each)}?${each.how}&${each.folder}`;
const refs = new Map(shipped.filter(({ how }) => how === "installed").map((each) => [each.folder, refOf(each)]));

const licencesOf = (expression) =>
  / (OR|AND) /.test(expression) ? [{ expression }] : [{ license: { id: expression } }];

/** The lock file has hashes as `sha512-` and base64, the format wants them in hexadecimal. */
function hashesOf({ folder, how, integrity }) {
  const [algorithm, hash] = ((how === "bundled" ? integrity : packages[folder]?.integrity) ?? "").split("-");
  if (algorithm !== "sha512") return {};
  return { hashes: [{ alg: "SHA-512", content: Buffer.from(hash, "base64").toString("hex") }] };
}

const componentOf = (each) => ({
  "bom-ref": refOf(each),
  type: "library",
  name: each.name,
  version: each.version,
  purl: purlOf(each),
  licenses: licencesOf(each.license),
  ...hashesOf(each),
  properties: [{ name: "prepwright:how", value: each.how === "bundled" ? "part of dist/explorer" : "installed" }],
});

/** Where a package finds another: beside itself, or in a folder further out. */
function found(from, wanted) {
  for (let folder = from; ; folder = dirname(folder)) {
    const candidate = join(folder === "." ? "" : folder, "node_modules", wanted);
    if (refs.has(candidate)) return refs.get(candidate);
    if (folder === "." || folder === "") return undefined;
  }
}

const dependsOn = (folder) => {
  const { dependencies = {}, optionalDependencies = {}, peerDependencies = {} } = packages[folder] ?? {};
  const wanted = Object.keys({ ...dependencies, ...optionalDependencies, ...peerDependencies });
  return [...new Set(wanted.flatMap((each) => found(folder, each) ?? []))].toSorted();
};

const self = `pkg:npm/${name}@${version}`;
const bundled = shipped.filter(({ how }) => how === "bundled").map(refOf);
const bom = {
  $schema: "http://cyclonedx.org/schema/bom-1.5.schema.json",
  bomFormat: "CycloneDX",
  specVersion: "1.5",
  serialNumber: `urn:uuid:${randomUUID()}`,
  version: 1,
  metadata: {
    timestamp: new Date().toISOString(),
    component: { "bom-ref": self, type: "application", name, version, purl: self, licenses: licencesOf(license) },
  },
  components: shipped.map(componentOf),
  dependencies: [
    { ref: self, dependsOn: [...dependsOn(""), ...bundled] },
    ...[...refs].map(([folder, ref]) => ({ ref, dependsOn: dependsOn(folder) })),
  ],
};

const faults = await new Validation.JsonStrictValidator(Spec.Version.v1dot5).validate(JSON.stringify(bom));
if (faults !== null) {
  console.error(faults);
  process.exit(1);
}
const reached = new Set();
const reach = (ref) => {
  if (reached.has(ref)) return;
  reached.add(ref);
  for (const each of bom.dependencies.find((node) => node.ref === ref)?.dependsOn ?? []) reach(each);
};
reach(self);
const orphans = bom.components.filter((component) => !reached.has(component["bom-ref"]));
for (const { name: orphan } of orphans) console.error(`${orphan} is needed by nothing that is shipped`);
if (orphans.length > 0) process.exit(1);
await mkdir(join(root, "reports"), { recursive: true });
const file = `reports/${name}-${version}.cdx.json`;
await writeFile(join(root, file), `${JSON.stringify(bom, null, 2)}\n`);
console.log(`${file}: ${shipped.length} packages, ${bundled.length} of them part of the explorer page`);
