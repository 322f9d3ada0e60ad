import { isTimeZone } from "../../../domain/time-zone.js";
import { regionCode, regionInstead } from "../../../domain/model/region-codes.js";
import { currencyCodes } from "../../../domain/model/currency-codes.js";
import { nearestCodes } from "../../../domain/quantity/naming/nearest-words.js";
import { failed, ok, type Problem, type Result } from "../../../domain/problem.js";
import { requireScope, type Caller } from "../../access/actor.js";
import type { Data, Deps, FeedKind } from "../../deps.js";
import { feedSettingsSchema, isShared, usualLimits, type FeedSettings } from "./feed-settings.js";
import { isCron } from "./crontab.js";
import { isStorable } from "../../storable-text.js";
import { urlProblems } from "../../webhooks/webhook-address.js";
import { findFoodsOf } from "../../foods/find-foods-of.js";
import { write } from "../../write.js";

export interface FeedInput {
  /** Slug of whose feed it is; null: the operator's. */
  readonly publisher: string | null;
  readonly slug: string;
  readonly kind: FeedKind;
  /** As a JSON value, checked here. */
  readonly settings: unknown;
  readonly cron?: string | null | undefined;
  readonly zone?: string | null | undefined;
  readonly enabled?: boolean | null | undefined;
  readonly idempotencyKey?: string | null | undefined;
}

export type FeedName = { readonly publisher: string | null; readonly slug: string };

/**
 * Makes a feed, or replaces the one of that owner and slug. Foods and the open table belong to all publishers, so feeds of them are the
 * operator's; documents and recipes become drafts of a publisher. Prices of the operator's are everybody's, a publisher's become its own packs.
 * A feed that publishes needs the scope PUBLISH too.
 * @throws NotAllowed
 */
export async function saveFeed(deps: Deps, caller: Caller, input: FeedInput): Promise<Result<FeedName>> {
  const { publisher, slug, kind, cron = null, zone, enabled, idempotencyKey } = input;
  const settings = feedProblems({ publisher, slug, kind, settings: input.settings, cron, zone: zone ?? "UTC" });
  if (settings.ok && settings.value.publish) requireScope(caller.actor, "PUBLISH", publisher);
  const asked = { slug, kind, settings: input.settings, cron, zone: zone ?? null, enabled: enabled ?? null };
  return write(
    deps,
    { caller, scope: "IMPORT", publisher, action: "SAVE_FEED", idempotencyKey, input: asked },
    async ({ data }) => {
      const problems = settings.ok ? [] : [...settings.problems];
      const before = await data.feeds.find(publisher, slug);
      if (before !== null && before.kind !== kind) {
        problems.push({
          code: "BAD_SHAPE",
          path: ["input", "kind"],
          expected: `${before.kind}, which this feed is`,
          got: kind,
        });
      }
      if (settings.ok) problems.push(...(await articleProblems(data, publisher, settings.value)));
      if (problems.length > 0 || !settings.ok) return failed(problems);
      await data.feeds.save({
        ...{ publisher, slug, kind, cron, zone: zone ?? "UTC", enabled: enabled ?? true },
        settings: settings.value,
      });
      return ok({ value: { publisher, slug }, subject: { kind: "FEED", name: slug, before: null, after: null } });
    },
  );
}

/** All that can be said of a feed without looking anything up; its settings with their defaults. */
export function feedProblems({
  publisher,
  slug,
  kind,
  settings: given,
  cron,
  zone,
}: Pick<FeedInput, "publisher" | "slug" | "kind" | "settings"> & {
  readonly cron: string | null;
  readonly zone: string;
}): Result<FeedSettings> {
  const settings = readSettings(kind, given);
  const problems = [
    ...slugProblems(slug),
    ...ownerProblems(kind, publisher),
    ...timeProblems(cron, zone),
    ...(settings.ok ? [...regionProblems(settings.value), ...placeProblems(settings.value)] : settings.problems),
  ];
  return problems.length > 0 ? failed(problems) : settings;
}

function readSettings(kind: FeedKind, given: unknown): Result<FeedSettings> {
  const isMap = typeof given === "object" && given !== null && !Array.isArray(given);
  const whole: unknown = isMap && !("limits" in given) ? { ...given, limits: usualLimits[kind] } : given;
  const parsed = feedSettingsSchema.safeParse(whole);
  if (!parsed.success) {
    return failed(
      parsed.error.issues.map((issue) => ({
        code: "BAD_SHAPE",
        path: ["input", "settings", ...issue.path.map((each) => (typeof each === "symbol" ? String(each) : each))],
        expected: issue.message.replace(/^Invalid input: expected /, ""),
        got: "something else",
      })),
    );
  }
  if (!isStorable(JSON.stringify(parsed.data).replaceAll("\\u0000", "\0"))) {
    return failed([
      { code: "BAD_SHAPE", path: ["input", "settings"], expected: "text", got: "a NUL or half a character" },
    ]);
  }
  const { currency } = parsed.data;
  if (currency !== null && !currencyCodes.includes(currency)) {
    const nearest = nearestCodes(currency, currencyCodes);
    const path = ["input", "settings", "currency"];
    return failed([{ code: "UNKNOWN_CODE", path, list: "currency", written: currency, nearest }]);
  }
  return ok(parsed.data);
}

/** Only asked of what is saved now: a feed saved by an earlier release goes on as it is. */
const regionProblems = ({ region }: FeedSettings): Problem[] =>
  region === null || regionCode(region) !== null
    ? []
    : [{ code: "BAD_SHAPE", path: ["input", "settings", "region"], expected: regionInstead(region), got: region }];

/** Foods of articles that there are not, each under the number of its article. */
async function articleProblems(
  data: Data,
  publisher: string | null,
  { articles }: FeedSettings,
): Promise<readonly Problem[]> {
  const foods = [...new Set(Object.values(articles))];
  const found = publisher === null ? await data.foods.bySlugs(foods) : await findFoodsOf(data, publisher, foods);
  const unknown = new Set(foods.filter((_, at) => found[at] === null));
  return Object.entries(articles)
    .filter(([, food]) => unknown.has(food))
    .map(([article, food]) => ({ code: "UNKNOWN_FOOD", path: ["input", "settings", "articles", article], food }));
}

/** Where a name leads is known only when it is fetched, and is looked at then; what says so itself is refused at once. */
function placeProblems({ place }: FeedSettings): readonly Problem[] {
  if (place.kind !== "ADDRESS") return [];
  const path = ["input", "settings", "place"];
  return [
    ...urlProblems(place.url, false, [...path, "url"]),
    ...place.hosts.flatMap((host, at) => urlProblems(`https://${host}/`, false, [...path, "hosts", at])),
  ];
}

const slugProblems = (slug: string): Problem[] =>
  /^[a-z0-9]+(-[a-z0-9]+)*$/.test(slug) && slug.length <= 80
    ? []
    : [
        {
          code: "BAD_SHAPE",
          path: ["input", "slug"],
          expected: "at most 80 lower-case letters and digits, words joined by hyphens",
          got: "something else",
        },
      ];

function ownerProblems(kind: FeedKind, publisher: string | null): readonly Problem[] {
  if (isShared(kind) === (publisher === null) || kind === "PRICES") return [];
  const expected = isShared(kind)
    ? "no publisher: foods and the open table are shared, so their feeds are the operator's"
    : "a publisher";
  return [{ code: "BAD_SHAPE", path: ["input", "publisher"], expected, got: publisher ?? "none" }];
}

function timeProblems(cron: string | null, zone: string): readonly Problem[] {
  const problems: Problem[] = [];
  if (cron !== null && !isCron(cron)) {
    problems.push({
      code: "BAD_SHAPE",
      path: ["input", "cron"],
      expected: "five fields, such as 30 2 * * *",
      got: "something else",
    });
  }
  if (!isTimeZone(zone)) {
    problems.push({
      code: "BAD_SHAPE",
      path: ["input", "zone"],
      expected: "an IANA time zone, such as Europe/Lisbon",
      got: "another",
    });
  }
  return problems;
}
