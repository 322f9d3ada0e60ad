/**
 * Keeps pages that were opened, with their style and scripts, for when there is no network: lists in a cellar shop, the kitchen view with wet
 * hands. The network comes first, so nobody reads old amounts where there are new ones.
 */
interface Worker {
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(
    type: "install" | "activate",
    listen: (event: { waitUntil(work: Promise<unknown>): void }) => void,
  ): void;
  addEventListener(
    type: "fetch",
    listen: (event: { readonly request: Request; respondWith(answer: Promise<Response>): void }) => void,
  ): void;
}

const worker = globalThis as unknown as Worker;
const shelf = "prepwright-pages-1";
/** Pages and files that are kept: the oldest go first. */
const most = 40;

worker.addEventListener("install", (event) => event.waitUntil(worker.skipWaiting()));
worker.addEventListener("activate", (event) => event.waitUntil(worker.clients.claim()));

/** Pages to shop and to cook by, and what they load. */
const isKept = ({ pathname }: URL): boolean =>
  /^\/p\/[^/]+\/[^/]+\/(list|cook)$/.test(pathname) || pathname.startsWith("/p-assets/");

worker.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && isKept(new URL(request.url))) event.respondWith(fromNetworkFirst(request));
});

/** By these names an address tells of somebody's health: other people may use this device. */
const tellsOfHealth = ["diet", "diets", "avoid-allergen", "avoidAllergens", "dislike", "dislikes"];

const isPrivate = ({ headers }: Response, { url }: Request): boolean =>
  headers.get("cache-control")?.includes("no-store") === true ||
  tellsOfHealth.some((name) => new URL(url).searchParams.has(name));

async function fromNetworkFirst(request: Request): Promise<Response> {
  const kept = await caches.open(shelf);
  try {
    const answer = await fetch(request);
    if (answer.ok && !isPrivate(answer, request)) await keep(kept, request, answer.clone());
    return answer;
  } catch (error) {
    const known = await kept.match(request);
    if (known !== undefined) return known;
    throw error;
  }
}

async function keep(kept: Cache, request: Request, answer: Response): Promise<void> {
  await kept.delete(request);
  await kept.put(request, answer);
  const keys = await kept.keys();
  await Promise.all(keys.slice(0, Math.max(0, keys.length - most)).map((key) => kept.delete(key)));
}
