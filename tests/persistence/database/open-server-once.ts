import { openServer } from "../../../src/persistence/database/open-server.js";

/** A process that opens a server, saves a publisher and ends. Arguments: address, slug. */
const [url = "", slug = ""] = process.argv.slice(2);
const { data, close } = await openServer(url);
await data.publishers.save({ slug, name: slug });
await close();
process.stdout.write(`saved ${slug}\n`);
