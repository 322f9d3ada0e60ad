import { createServer, type Server, type Socket } from "node:net";
import type { AddressInfo } from "node:net";
import { afterEach, describe, expect, it } from "vitest";
import { answerToHead, faultOf, RequestSender } from "../fuzz/request-sender.js";
import { post } from "./attack-request.js";

/** Answers with these bytes as soon as a head has come, or not at all, and cuts the connection while the body is coming. */
function cutting(answer: string): Promise<Server> {
  const server = createServer((socket: Socket) => {
    socket.on("error", () => undefined);
    socket.once("data", () => {
      socket.write(answer);
      socket.resetAndDestroy();
    });
  });
  return new Promise((ready) => server.listen(0, "127.0.0.1", () => ready(server)));
}

const head = "content-type: application/problem+json\r\ncontent-length: 2\r\n";
const large = post("a large body", "/graphql", "1".repeat(3_000_000));
const small = post("a small body", "/graphql", "1".repeat(100));

describe("a connection that is cut while a body comes in", () => {
  let server: Server;
  afterEach(() => server.close());
  const address = async (answer: string): Promise<URL> => {
    server = await cutting(answer);
    return new URL(`http://127.0.0.1:${String((server.address() as AddressInfo).port)}`);
  };

  it.each([
    ["nothing", ""],
    ["half an answer", "HTTP/1.1 413 Payload"],
    ["an answer that keeps the connection", `HTTP/1.1 413 Payload Too Large\r\n${head}\r\n{}`],
    ["another answer", `HTTP/1.1 400 Bad Request\r\n${head}connection: close\r\n\r\n{}`],
  ])("was not refused by its length with %s", async (_, answer) => {
    expect(await answerToHead(await address(answer), large)).toBeNull();
  });

  it("was refused by its length with 413 and an end of the connection, and that is no fault", async () => {
    const answer = `HTTP/1.1 413 Payload Too Large\r\n${head}connection: close\r\n\r\n{}`;
    const found = await answerToHead(await address(answer), large);
    expect(found).toEqual({ kind: "ANSWER", status: 413, type: "application/problem+json", text: "{}" });
    expect(found && faultOf(large, found)).toBeNull();
  });

  it.each([large, small])("is a fault where nothing is said, however long the body: $name", async (request) => {
    const sender = new RequestSender((await address("")).href, 1);
    expect(faultOf(request, await sender.send(request))).toMatch(/^the connection was cut/);
    sender.close();
  });
});
