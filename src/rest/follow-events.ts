import type { FastifyReply, FastifyRequest } from "fastify";
import { eventStreamType, eventText, type EventStream, type WriteStreamEnd } from "../http/event-stream.js";
import { DatabaseUnavailable, logUnavailable } from "../services/database-unavailable.js";
import { pointsOfAnswer } from "./endpoint-cost.js";
import type { Endpoint, FollowedEvents, Question } from "./endpoint.js";
import { sendRefusal } from "./send-problem.js";

/** Milliseconds after which a reader whose connection broke comes back. */
const retryMs = 3_000;

const writeEnd: WriteStreamEnd = (why, comeBackMs) =>
  `retry: ${comeBackMs}\n${eventText({ event: "end", data: JSON.stringify({ reason: why }) })}`;

/** Answers with a stream of events. What is wrong with the question is refused before it begins. */
export async function followEvents(
  find: NonNullable<Endpoint["events"]>,
  { question, queryTime }: { readonly question: Question; readonly queryTime: number },
  request: FastifyRequest,
  reply: FastifyReply,
): Promise<FastifyReply> {
  const given = request.headers["last-event-id"];
  const lastEventId = typeof given === "string" && given !== "" ? given : null;
  const found = await find({ question, lastEventId, queryTime });
  if (!found.ok) return sendRefusal(found.refusal, request, reply);
  if (request.method === "HEAD") return reply.header("content-type", eventStreamType).send();
  const { position } = found.value;
  const stream = reply.openStream(`retry: ${retryMs}\nid: ${position}\n\n`, writeEnd);
  void send(found.value, stream, request);
  return reply;
}

async function send(events: FollowedEvents, stream: EventStream, { log, id }: FastifyRequest): Promise<void> {
  try {
    for await (const piece of events.follow(stream.over)) {
      // It is over, or what is left unsaid is said to whoever comes back.
      if (stream.over.aborted || !stream.charge(pointsOfAnswer)) return;
      await stream.send(piece);
    }
  } catch (error) {
    if (stream.over.aborted) return;
    const isAway = error instanceof DatabaseUnavailable;
    if (isAway) logUnavailable(log, id, error);
    else log.error({ err: error }, "a stream of events failed");
    stream.end(isAway ? "UNAVAILABLE" : "FAULT");
  }
}
