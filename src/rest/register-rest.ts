import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerDisconnected } from "../http/caller-disconnected.js";
import { answerKey, type AnswerKey } from "../services/cache/cached-answer.js";
import type { Deps } from "../services/deps.js";
import type { Endpoint, Question, Writing } from "./endpoint.js";
import { endpoints } from "./endpoints.js";
import { bareType, formatChooser, formats, splitSuffix } from "./format.js";
import { depsForActor } from "../services/deps-for-actor.js";
import { readJsonBody } from "./json-body.js";
import { badParameter, queryProblems, readQuery } from "./parameter.js";
import { pointsOfAnswer } from "./endpoint-cost.js";
import {
  cacheControlOf,
  encodeResponse,
  cachedResponse,
  readyResponse,
  sendFrom,
  type ResponseOrRefusal,
} from "./cached-response.js";
import { badParameters, notFound, refusal } from "./refusal.js";
import { followEvents } from "./follow-events.js";
import { streamResponse } from "./stream-response.js";
import { registerProblemPages } from "./routes/problem-pages.js";
import { sendFailure, sendRefusal } from "./send-problem.js";

interface RestOptions {
  readonly deps: Deps;
  /** Milliseconds that an answer may take to compute. */
  readonly queryTime: number;
  /** The same where a file comes with it: the time in which it has to arrive is part of it. */
  readonly uploadTime: number;
  /** Where the operator says that readers reach the service; null: nowhere in particular. */
  readonly publicUrl: string | null;
}

const methods = ["GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS"] as const;

/** Fastify's spelling of an address: `/v1/plans/:publisher`. */
export const routeOf = (path: string): string => path.replace(/\{([a-z]+)\}/gi, ":$1");

/** Every endpoint, with the methods it does not take. */
export function registerRest(app: FastifyInstance, options: RestOptions): void {
  void app.register((scope, _options, done) => {
    scope.removeAllContentTypeParsers();
    scope.addContentTypeParser("application/json", { parseAs: "buffer" }, readJsonBody);
    scope.setErrorHandler(sendFailure);
    registerProblemPages(scope);
    for (const path of new Set(endpoints.map((endpoint) => endpoint.path))) {
      registerPath(
        scope,
        path,
        endpoints.filter((endpoint) => endpoint.path === path),
        options,
      );
    }
    done();
  });
}

function registerPath(scope: FastifyInstance, path: string, here: readonly Endpoint[], options: RestOptions): void {
  const taken = here.flatMap(({ method }) => (method === "GET" ? ["GET", "HEAD"] : [method]));
  const allow = [...taken, "OPTIONS"].join(", ");
  const url = routeOf(path);
  const config = { points: pointsOfAnswer };
  for (const endpoint of here) {
    const handler = answering(endpoint, options);
    if (endpoint.upload !== true) scope.route({ method: endpoint.method, url, config, handler });
    else {
      void scope.register((files, _options, done) => {
        files.removeAllContentTypeParsers();
        files.addContentTypeParser("*", (_request, payload, read) => read(null, payload));
        files.route({ method: endpoint.method, url, handler, config: { ...config, upload: true } });
        done();
      });
    }
  }
  scope.options(url, { config: { points: 0 } }, (_request, reply) => reply.code(204).header("allow", allow).send());
  scope.route({
    method: methods.filter((method) => method !== "OPTIONS" && !taken.includes(method)),
    url,
    // Before a body is looked at: what is wrong is the method, whatever comes with it.
    onRequest: (request, reply) => {
      sendRefusal(
        refusal("method-not-allowed", `This address takes ${allow}.`, { headers: { allow } }),
        request,
        reply,
      );
    },
    handler: (_request, reply) => reply,
  });
}

/** One form of an address, and where its answer is kept; null: nowhere. */
interface Chosen {
  readonly url: string;
  readonly type: string;
  readonly writing: Writing;
  readonly place: AnswerKey | null;
}

/** Answers requests of one endpoint: from the cache where it can. */
function answering(
  endpoint: Endpoint,
  { deps, queryTime, uploadTime, publicUrl }: RestOptions,
): (request: FastifyRequest, reply: FastifyReply) => FastifyReply | Promise<FastifyReply> {
  const offered = [
    ...endpoint.writings.map((writing) => ({ ...writing.format, writing })),
    ...(endpoint.page === undefined ? [] : [{ ...formats.html, writing: null }]),
  ];
  const choose = formatChooser(offered);
  const brief = offered.find(({ suffix }) => suffix === formats.brief.suffix);
  const selectedBy = (url: string): string | undefined => {
    if (endpoint.selection === undefined) return undefined;
    const query = readQuery(url);
    return endpoint.selection.find((name) => query.has(name));
  };
  const limit = endpoint.upload === true ? uploadTime : queryTime;
  const isShared = endpoint.method === "GET" && endpoint.scope === undefined && endpoint.caching !== "NEVER";
  return (request, reply) => {
    const { url, suffix } = splitSuffix(request.originalUrl);
    if (suffix === null && offered.length > 1) reply.header("vary", "Accept");
    const form = choose(suffix, request.headers);
    if (form === null) return sendRefusal(noForm(endpoint, suffix), request, reply);
    const selected = url.includes("?") ? selectedBy(url) : undefined;
    if (selected !== undefined && form.writing !== null && !isJson(form.type))
      return sendRefusal(
        badParameters([badParameter(selected, "nothing beside a form that is not JSON", form.type)]),
        request,
        reply,
      );
    const chosen = selected === undefined || form.writing === null ? form : (brief ?? form);
    const { writing, type } = chosen;
    if (writing === null) {
      // The page says itself what is wrong with what was asked of it.
      const page = endpoint.page?.(question(url, request)(deps)) ?? "/";
      return reply.header("cache-control", cacheControlOf("LIVE")).redirect(page, 303);
    }
    const place = isShared ? answerKey("restAnswers", `${type} ${request.publicOrigin} ${url}`) : null;
    const ready = place === null ? undefined : readyResponse(deps, request, place);
    if (ready === undefined) return compute({ url, type, writing, place }, request, reply);
    if (ready.beyond !== undefined) reply.charge(ready.beyond);
    return sendFrom(deps, place, ready, request, reply);
  };

  function question(address: string, request: FastifyRequest): (of: Deps) => Question {
    const { params, body, headers, actor, id, publicOrigin } = request;
    return (of) => ({
      deps: of,
      path: params as Readonly<Record<string, string>>,
      query: readQuery(address),
      body,
      bodyLength: lengthOf(headers["content-length"]),
      caller: { actor, requestId: id },
      origin: publicOrigin,
      publicUrl,
      address,
    });
  }

  async function compute(
    { url, type, writing, place }: Chosen,
    request: FastifyRequest,
    reply: FastifyReply,
  ): Promise<FastifyReply> {
    const ask = question(url, request);
    const beyond = endpoint.points?.(ask(deps)) ?? 0;
    if (beyond > 0) reply.charge(beyond);
    if (endpoint.events !== undefined) {
      // From the primary: a replica may lack what was just heard of.
      const wanted = ask(deps);
      const wrong = queryProblems(wanted.query, endpoint.parameters);
      if (wrong.length > 0) return sendRefusal(badParameters(wrong), request, reply);
      return followEvents(endpoint.events, { question: wanted, queryTime }, request, reply);
    }
    if (endpoint.stream !== undefined) {
      const wanted = ask(depsForActor(deps, request.actor));
      const wrong = queryProblems(wanted.query, endpoint.parameters);
      if (wrong.length > 0) return sendRefusal(badParameters(wrong), request, reply);
      return streamResponse(endpoint.stream, wanted, { type, limit: uploadTime }, request, reply);
    }
    const answer = async (watched: Deps): Promise<ResponseOrRefusal> => {
      const asked = ask(watched);
      const wrong = queryProblems(asked.query, endpoint.parameters);
      if (wrong.length > 0) return { ok: false, refusal: badParameters(wrong) };
      const result = await endpoint.answer(asked, writing);
      if (!result.ok) return result;
      const headers = { ...result.headers, "content-type": type };
      const response = encodeResponse(result.value, endpoint.caching, endpoint.status ?? 200, headers);
      return beyond > 0 ? { ...response, beyond } : response;
    };
    const gone = () => (endpoint.upload === true ? null : callerDisconnected(reply.raw));
    const computed = await cachedResponse({ deps, request, reply, place, limit, gone, compute: answer });
    return computed.ok
      ? sendFrom(deps, place, computed, request, reply)
      : sendRefusal(computed.refusal, request, reply);
  }
}

const isJson = (type: string): boolean => type === formats.json.type || type === formats.brief.type;

const lengthOf = (header: string | undefined): number | null =>
  header !== undefined && /^\d{1,15}$/.test(header) ? Number(header) : null;

const noForm = ({ writings }: Endpoint, suffix: string | null) =>
  suffix === null
    ? refusal("not-acceptable", "None of the media types in Accept can be had here.", {
        more: { available: writings.map(({ format }) => bareType(format.type)) },
      })
    : notFound(
        `There is nothing with the ending .${suffix} here. There is: ${writings.map(({ format }) => `.${format.suffix}`).join(", ")}.`,
      );
