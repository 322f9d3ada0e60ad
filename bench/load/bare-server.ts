import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";

/** `bare-server.ts FILE TYPE`: Node's own HTTP server, which reads each request to its end and answers with the bytes of the file. */
const [file = "", type = ""] = process.argv.slice(2);
const bytes = readFileSync(file);
const headers = { "content-type": type, "content-length": String(bytes.length) };
const server = createServer((request, response) => {
  const send = (): void => void response.writeHead(200, headers).end(bytes);
  if (request.method === "GET") send();
  else request.on("end", send).resume();
});
server.listen(0, "127.0.0.1", () => console.log(`http://127.0.0.1:${String((server.address() as AddressInfo).port)}`));
