import { openEmbedded } from "../../../src/persistence/database/open-embedded.js";

/** A process that opens the embedded database in a folder, saves a publisher, says so, and stays. */
const [folder = "", slug = ""] = process.argv.slice(2);
const { data } = await openEmbedded(folder);
await data.publishers.save({ slug, name: slug });
process.stdout.write("open\n");
setInterval(() => undefined, 60_000);
