import { afterAll, beforeAll, beforeEach, expect, it } from "vitest";
import { openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { planText, prepareWriting, publisher } from "../../kit/plan-writer.js";
import { runScheduled } from "../../../src/services/schedule/run-scheduled.js";
import { gatherMorning } from "../../../src/services/imports/reports/morning-report.js";

const parts = `scheduled { id slug kind state dueAt localTime zone version revision notice cancelledBecause
  problems { code message } } problems { code message path }`;
const publishAt = `mutation ($input: SchedulePublicationInput!) { schedulePublication(input: $input) { ${parts} } }`;
const withdrawAt = `mutation ($input: ScheduleWithdrawalInput!) { scheduleWithdrawal(input: $input) { ${parts} } }`;
const change = `mutation ($input: ChangeScheduledInput!) { changeScheduled(input: $input) { ${parts} } }`;
const cancel = `mutation ($input: CancelScheduledInput!) { cancelScheduled(input: $input) { ${parts} } }`;
const list = `query ($publisher: String!, $states: [ScheduledState!]) { scheduled(publisher: $publisher, states: $states, first: 100) {
  edges { node { id slug kind state problems { code } cancelledBecause revision } } } }`;
const save = `mutation ($input: SaveDraftInput!) { savePlanDraft(input: $input) { draft { version } problems { message } } }`;
const publish = `mutation ($input: PublishPlanInput!) { publishPlan(input: $input) { plan { revision } problems { message } } }`;
const correct = `mutation ($input: CorrectPlanInput!) { correctPlan(input: $input) { problems { message } } }`;
const withdraw = `mutation ($input: WithdrawPlanInput!) { withdrawPlan(input: $input) { problems { message } } }`;
const plan = `query ($slug: String!) { plan(publisher: "${publisher}", slug: $slug) { title revision withdrawnBecause } }`;

interface Scheduled {
  readonly id: string;
  readonly state: string;
  readonly [name: string]: unknown;
}
interface Payload {
  readonly scheduled: Scheduled | null;
  readonly problems: readonly { readonly code: string; readonly message: string }[];
}

describeOnBothDatabases("what is scheduled", (open) => {
  let test: TestApp;
  let token: string;
  let now = new Date("2026-03-01T09:00:00Z");
  const begin = now;
  const zone = "Europe/Berlin";
  let count = 0;

  beforeAll(async () => {
    const database = await open();
    test = await openTestApp(database.data, undefined, () => now);
    token = await prepareWriting(database);
  });
  beforeEach(() => {
    now = begin;
  });
  afterAll(() => test.close());

  const ask = async <T>(query: string, variables: object, as = token): Promise<T> => {
    const { data, errors } = await test.ask(query, { ...variables }, as);
    expect(errors).toEqual([]);
    return Object.values(data ?? {})[0] as T;
  };
  const draft = async (slug: string, title: string, expectedVersion: number | null = null): Promise<void> => {
    const input = { publisher, text: planText(slug, title), expectedVersion };
    expect((await ask<Payload>(save, { input })).problems).toEqual([]);
  };
  const schedule = async (slug: string, at: string, expectedVersion = 1, as = token): Promise<Scheduled> => {
    const { scheduled, problems } = await ask<Payload>(
      ...([publishAt, { input: { publisher, slug, expectedVersion, at, zone } }, as] as const),
    );
    expect(problems).toEqual([]);
    return scheduled as Scheduled;
  };
  const refusals = async (query: string, input: object): Promise<readonly string[]> =>
    (await ask<Payload>(query, { input })).problems.map(({ code }) => code);
  const shown = async (slug: string) => ((await test.ask(plan, { slug })).data?.["plan"] ?? null) as unknown;
  const stateOf = async (id: string): Promise<Scheduled | undefined> =>
    (await ask<{ edges: { node: Scheduled }[] }>(list, { publisher, states: [] })).edges.find(
      ({ node }) => node.id === id,
    )?.node;
  const fresh = (): string => `plan-${String((count += 1))}`;

  it("is published at its hour, once, in the version that it was scheduled with", async () => {
    const slug = fresh();
    await draft(slug, "As scheduled");
    const made = await schedule(slug, "2026-03-02T06:00");
    expect(made).toMatchObject({ state: "WAITING", version: 1, dueAt: "2026-03-02T05:00:00.000Z", zone });
    expect(made["notice"]).toContain("Later saves do not change that");
    await draft(slug, "Saved later", 1);
    now = new Date("2026-03-02T04:59:59Z");
    expect(await runScheduled(test.deps)).toMatchObject({ published: 0 });
    expect(await shown(slug)).toBeNull();
    now = new Date("2026-03-02T05:00:00Z");
    expect(await runScheduled(test.deps)).toMatchObject({ published: 1, keptBack: 0 });
    expect(await shown(slug)).toMatchObject({ title: "As scheduled", revision: 1 });
    expect(await runScheduled(test.deps)).toMatchObject({ published: 0 });
    expect(await stateOf(made.id)).toMatchObject({ state: "DONE", revision: 1 });
  });

  it("is done once by five workers at the same time, and once when it was missed", async () => {
    const slugs = Array.from({ length: 6 }, fresh);
    for (const slug of slugs) {
      await draft(slug, slug);
      await schedule(slug, "2026-03-02T06:00");
    }
    now = new Date("2026-03-20T12:00:00Z");
    const workers = await Promise.all(Array.from({ length: 5 }, () => runScheduled(test.deps)));
    expect(workers.reduce((sum, { published }) => sum + published, 0)).toBe(slugs.length);
    for (const slug of slugs) {
      const all = await test.deps.data.revisions.ofPlan(
        { publisher, slug },
        { first: 9, after: null, last: null, before: null },
      );
      expect(all.items).toHaveLength(1);
    }
  });

  it("is published and then withdrawn where both were missed, with the reason", async () => {
    const slug = fresh();
    const unknown = await refusals(withdrawAt, { publisher, slug, reason: "Over.", at: "2026-03-03T06:00", zone });
    expect(unknown).toEqual(["UNKNOWN_PLAN"]);
    await draft(slug, "For a day");
    await schedule(slug, "2026-03-02T06:00");
    const early = await refusals(withdrawAt, { publisher, slug, reason: "Over.", at: "2026-03-02T06:00", zone });
    expect(early).toEqual(["BAD_SHAPE"]);
    const input = { publisher, slug, reason: "The season is over.", at: "2026-03-02T06:01", zone };
    expect((await ask<Payload>(withdrawAt, { input })).problems).toEqual([]);
    now = new Date("2026-03-04T00:00:00Z");
    expect(await runScheduled(test.deps)).toMatchObject({ published: 1, withdrawn: 1 });
    const { errors } = await test.ask(plan, { slug });
    expect(errors).toMatchObject([
      { extensions: { code: "WITHDRAWN", problems: [{ because: "The season is over." }] } },
    ]);
  });

  it("is moved and cancelled while it waits, and another takes its place", async () => {
    const slug = fresh();
    await draft(slug, "Moving");
    const made = await schedule(slug, "2026-03-02T06:00");
    const moved = await ask<Payload>(change, { input: { id: made.id, at: "2026-03-05T06:00", zone: "UTC" } });
    expect(moved.scheduled).toMatchObject({ dueAt: "2026-03-05T06:00:00.000Z", version: 1 });
    expect(await refusals(change, { id: made.id, at: "2026-02-05T06:00", zone: "UTC" })).toEqual(["BAD_TIME"]);
    now = new Date("2026-03-03T00:00:00Z");
    expect(await runScheduled(test.deps)).toMatchObject({ published: 0 });
    const second = await schedule(slug, "2026-03-06T06:00");
    expect(await stateOf(made.id)).toMatchObject({ state: "CANCELLED", cancelledBecause: "REPLACED" });
    const cancelled = await ask<Payload>(cancel, { input: { id: second.id } });
    expect(cancelled.scheduled).toMatchObject({ state: "CANCELLED", cancelledBecause: "ASKED" });
    expect(await refusals(cancel, { id: second.id })).toEqual(["NOT_WAITING"]);
    expect(await refusals(change, { id: second.id, at: "2026-03-09T06:00", zone })).toEqual(["NOT_WAITING"]);
    expect(await refusals(cancel, { id: "11111111-1111-4111-8111-111111111111" })).toEqual(["UNKNOWN_SCHEDULED"]);
    now = new Date("2026-03-10T00:00:00Z");
    expect(await runScheduled(test.deps)).toMatchObject({ published: 0 });
    expect(await shown(slug)).toBeNull();
  });

  it("is kept back where facts of its hour stop it, and webhooks and the morning report say so", async () => {
    const slug = fresh();
    const { data } = test.deps;
    const webhook = { publisher, url: "https://hooks.example.org/", kinds: [], secret: "whsec_eA==", createdAt: now };
    const hook = await data.webhooks.create({ ...webhook, kinds: ["PLAN_KEPT_BACK"] });
    await draft(slug, "Names a carrot");
    const made = await schedule(slug, "2026-03-02T06:00");
    const [carrot] = await data.foods.bySlugs(["carrot"]);
    await data.foods.remove(["carrot"]);
    now = new Date("2026-03-02T05:00:10Z");
    expect(await runScheduled(test.deps)).toMatchObject({ published: 0, keptBack: 1 });
    await data.foods.save([carrot!]);
    expect(await stateOf(made.id)).toMatchObject({ state: "KEPT_BACK", problems: [{ code: "UNKNOWN_FOOD" }] });
    expect(await shown(slug)).toBeNull();
    // Once: it waits for somebody, not for the next minute.
    expect(await runScheduled(test.deps)).toMatchObject({ published: 0, keptBack: 0 });
    const [told, ...more] = await data.webhookDeliveries.claim(now, new Date(now.getTime() + 1_000), 10);
    expect(more).toEqual([]);
    expect(told).toMatchObject({
      webhookId: hook,
      tells: {
        kind: "PLAN_KEPT_BACK",
        scheduledId: made.id,
        plan: slug,
        scheduled: "PUBLISH",
        problems: ["UNKNOWN_FOOD"],
      },
    });
    const { report } = await gatherMorning(test.deps, undefined, 24);
    expect(report.keptBack).toMatchObject([{ publisher, slug, kind: "PUBLISH", problems: [{ code: "UNKNOWN_FOOD" }] }]);
    await data.webhooks.remove(hook);
  });

  it("is kept back where the plan was published after it was scheduled", async () => {
    const slug = fresh();
    await draft(slug, "Old words");
    const made = await schedule(slug, "2026-03-02T06:00");
    await draft(slug, "Mended words", 1);
    await ask(publish, { input: { publisher, slug, expectedVersion: 2 } });
    now = new Date("2026-03-02T06:00:00Z");
    expect(await runScheduled(test.deps)).toMatchObject({ published: 0, keptBack: 1 });
    expect(await shown(slug)).toMatchObject({ title: "Mended words" });
    expect(await stateOf(made.id)).toMatchObject({ problems: [{ code: "CHANGED_SINCE_SCHEDULED" }] });
  });

  it("is asked for anew once the plan was published or withdrawn, since what waited would be kept back", async () => {
    const slug = fresh();
    await draft(slug, "In print");
    await ask(publish, { input: { publisher, slug, expectedVersion: 1 } });
    await draft(slug, "To come", 1);
    const first = await schedule(slug, "2026-03-02T06:00", 2);
    expect(await schedule(slug, "2026-03-02T06:00", 2)).toMatchObject({ id: first.id });
    await ask(withdraw, { input: { publisher, slug, revision: 1, reason: "A wrong heat." } });
    const second = await schedule(slug, "2026-03-02T06:00", 2);
    expect(second.id).not.toBe(first.id);
    expect(await stateOf(first.id)).toMatchObject({ state: "CANCELLED", cancelledBecause: "REPLACED" });
    now = new Date("2026-03-02T05:00:00Z");
    expect(await runScheduled(test.deps)).toMatchObject({ published: 1, keptBack: 0 });
    expect(await shown(slug)).toMatchObject({ title: "To come", revision: 2 });
  });

  it("is cancelled with the token that asked for it, and is within its time", async () => {
    const slug = fresh();
    await draft(slug, "Asked for by another");
    const until = new Date("2026-03-03T00:00:00Z");
    const short = await test.tokenFor(publisher, ["PUBLISH"], until);
    const late = { publisher, slug, expectedVersion: 1, at: "2026-03-03T06:00", zone };
    expect((await ask<Payload>(publishAt, { input: late }, short)).problems).toMatchObject([{ code: "BAD_SHAPE" }]);
    const made = await schedule(slug, "2026-03-02T06:00", 1, short);
    // As by a service of the version before, which knows of no schedule.
    await test.deps.data.accessTokens.revoke(short.slice(11, 19), now);
    now = new Date("2026-03-02T06:00:00Z");
    expect(await runScheduled(test.deps)).toMatchObject({ published: 0, cancelled: 1, keptBack: 0 });
    expect(await stateOf(made.id)).toMatchObject({ state: "CANCELLED", cancelledBecause: "TOKEN_REVOKED" });
    now = begin;
    const admin = await test.tokenFor(publisher, ["ADMIN"]);
    const other = await test.tokenFor(publisher, ["PUBLISH"]);
    const second = await schedule(slug, "2026-03-02T06:00", 1, other);
    const revoke = `mutation ($input: RevokeTokenInput!) { revokeToken(input: $input) { problems { code } } }`;
    await ask(revoke, { input: { id: other.slice(11, 19) } }, admin);
    expect(await stateOf(second.id)).toMatchObject({ state: "CANCELLED", cancelledBecause: "TOKEN_REVOKED" });
  });

  it("is refused for a version that is not there, a draft that cannot be published, and without the scope", async () => {
    const slug = fresh();
    await draft(slug, "Refused");
    const at = "2026-03-02T06:00";
    expect(await refusals(publishAt, { publisher, slug, expectedVersion: 7, at, zone })).toEqual(["STALE_DRAFT"]);
    expect(await refusals(publishAt, { publisher, slug: "none", expectedVersion: 1, at, zone })).toEqual([
      "UNKNOWN_DRAFT",
    ]);
    expect(await refusals(publishAt, { publisher, slug, expectedVersion: 1, at, zone: "Berlin" })).toEqual([
      "BAD_TIME",
    ]);
    const claims = planText("claims-much", "Claims").replace("meals:", "claims: [gluten-free]\nmeals:");
    const text = claims.replace("food: carrot, amount: 300 g", "food: bulgur, amount: 300 g");
    expect((await ask<Payload>(save, { input: { publisher, text } })).problems).toEqual([]);
    const claimed = { publisher, slug: "claims-much", expectedVersion: 1, at, zone };
    expect(await refusals(publishAt, claimed)).toEqual(["CLAIM_BROKEN"]);
    const writer = await test.tokenFor(publisher, ["WRITE", "READ_DRAFTS"]);
    const { errors } = await test.ask(publishAt, { input: { publisher, slug, expectedVersion: 1, at, zone } }, writer);
    expect(errors[0]?.extensions["code"]).toBe("FORBIDDEN");
  });

  it("is the hour that a document says, before which nothing else publishes its draft; a wrong one is found when it is saved", async () => {
    const slug = fresh();
    const dated = (at: string, place = zone): string =>
      `${planText(slug, "Dated")}publish-at: { at: "${at}", zone: ${place} }\n`;
    const saved = async (text: string, expectedVersion: number | null = null) =>
      (await ask<Payload>(save, { input: { publisher, text, expectedVersion } })).problems.map(
        ({ message }) => message,
      );
    expect((await saved(dated("2026-03-29T02:30")))[0]).toContain("does not exist in Europe/Berlin");
    expect((await saved(dated("2026-03-28T02:30", "Europa/Wien")))[0]).toContain("Did you mean Europe/Vienna?");
    expect(await saved(dated("2026-03-02T06:00"))).toEqual([]);
    const input = { publisher, slug, expectedVersion: 1 };
    const early = await ask<Payload>(publish, { input });
    expect(early.problems.map(({ message }) => message).join()).toContain("says publish-at 2026-03-02T06:00");
    expect(await shown(slug)).toBeNull();
    await schedule(slug, "2026-03-02T06:00");
    now = new Date("2026-03-02T05:00:00Z");
    expect(await runScheduled(test.deps)).toMatchObject({ published: 1 });
    // The same words without the key are the same revision: the hour is no part of it.
    expect(await saved(planText(slug, "Dated"), 1)).toEqual([]);
    const again = await ask<{ plan: { revision: number } }>(publish, { input: { ...input, expectedVersion: 2 } });
    expect(again.plan.revision).toBe(1);
    // A plan in print may be mended after its hour; one that is not was meant for another.
    expect(await saved(dated("2026-03-02T06:00").replace("title: Dated", "title: Mended"), 2)).toEqual([]);
    const mended = await ask<{ plan: { revision: number } }>(publish, { input: { ...input, expectedVersion: 3 } });
    expect(mended.plan.revision).toBe(2);
    const late = fresh();
    expect(await saved(dated("2026-03-01T06:00").replace(`slug: ${slug}`, `slug: ${late}`))).toEqual([]);
    const over = await ask<Payload>(publish, { input: { publisher, slug: late, expectedVersion: 1 } });
    expect(over.problems.map(({ message }) => message).join()).toContain("is over. Name a time to come");
  });

  it("is withdrawn when its document says so, whichever way it is published", async () => {
    const ending = `withdraw-at: { at: "2026-03-20T20:00", zone: ${zone}, reason: The season is over. }\n`;
    const saved = async (text: string, expectedVersion: number | null = null) =>
      expect((await ask<Payload>(save, { input: { publisher, text, expectedVersion } })).problems).toEqual([]);
    const waiting = async (slug: string) =>
      (await test.deps.data.scheduled.waiting(publisher, slug)).map(({ id, kind, localTime, reason }) => ({
        ...{ id, kind, localTime, reason },
      }));
    const slug = fresh();
    await saved(planText(slug, "Season") + ending);
    const first = await ask<Payload>(publish, { input: { publisher, slug, expectedVersion: 1 } });
    expect(first.problems).toEqual([]);
    const [row, ...others] = await waiting(slug);
    expect([row, others]).toMatchObject([{ kind: "WITHDRAW", localTime: "2026-03-20T20:00" }, []]);
    // Asked for once more, it is the same.
    await ask(publish, { input: { publisher, slug, expectedVersion: 1 } });
    const input = { publisher, slug, at: "2026-03-20T20:00", zone, reason: "The season is over." };
    await ask(withdrawAt, { input });
    expect(await waiting(slug)).toEqual([row]);
    // Of a plan that waits as well, and never before it is there.
    const later = fresh();
    await saved(`${planText(later, "Later")}publish-at: { at: "2026-03-02T06:00", zone: ${zone} }\n${ending}`);
    await schedule(later, "2026-03-02T06:00");
    expect((await waiting(later)).map(({ kind }) => kind)).toEqual(["PUBLISH", "WITHDRAW"]);
    const before = fresh();
    await saved(planText(before, "Before") + ending);
    const tooLate = { publisher, slug: before, expectedVersion: 1, at: "2026-03-21T06:00", zone };
    const refused = await ask<Payload>(publishAt, { input: tooLate });
    expect(refused.problems.map(({ message }) => message).join()).toContain("when the plan is published");
    expect(await waiting(before)).toEqual([]);
    // An hour that is over: of a plan that is not in print a slip of the finger, of one that is, nothing.
    now = new Date("2026-03-20T18:00:00Z");
    const over = await ask<Payload>(publish, { input: { publisher, slug: before, expectedVersion: 1 } });
    expect(over.problems).toEqual([]);
    now = new Date("2026-03-21T18:00:00Z");
    await saved(planText(before, "Mended after its end") + ending, 1);
    expect((await ask<Payload>(publish, { input: { publisher, slug: before, expectedVersion: 2 } })).problems).toEqual(
      [],
    );
    const gone = fresh();
    await saved(planText(gone, "Gone") + ending);
    const slip = await ask<Payload>(publish, { input: { publisher, slug: gone, expectedVersion: 1 } });
    expect(slip.problems.map(({ message }) => message).join()).toContain("is over");
    expect(await shown(gone)).toBeNull();
  });

  it("is in the audit trail, whichever way it was asked for, and once", async () => {
    const ending = (day: string): string =>
      `withdraw-at: { at: "2026-03-${day}T20:00", zone: ${zone}, reason: The season is over. }\n`;
    const saved = async (text: string, expectedVersion: number | null) =>
      expect((await ask<Payload>(save, { input: { publisher, text, expectedVersion } })).problems).toEqual([]);
    const slug = fresh();
    const name = { publisher, slug };
    const noted: string[] = [];
    const entries = async (): Promise<readonly string[]> => {
      const page = { first: 100, after: null, last: null, before: null };
      const { items } = await test.deps.data.auditTrail.page(publisher, page);
      return items.flatMap(({ item: { action, subjectKind, subject } }) =>
        subjectKind === "SCHEDULED" && action === "SCHEDULE_PLAN" ? [subject] : [],
      );
    };
    const isNoted = async (...kinds: readonly string[]): Promise<void> => {
      const waiting = await test.deps.data.scheduled.waiting(publisher, slug);
      const fresh = waiting.filter(({ id }) => !noted.includes(id));
      expect(fresh.map(({ kind }) => kind)).toEqual(kinds);
      const all = await entries();
      for (const { id } of fresh) expect(all.filter((each) => each === id)).toEqual([id]);
      noted.push(...fresh.map(({ id }) => id));
    };
    await saved(planText(slug, "Season") + ending("20"), null);
    await ask(publish, { input: { ...name, expectedVersion: 1 } });
    await isNoted("WITHDRAW");
    await ask(publish, { input: { ...name, expectedVersion: 1 } });
    await isNoted();
    await saved(planText(slug, "Season, mended") + ending("21"), 1);
    await ask(correct, { input: { ...name, expectedVersion: 2, changeNote: "Less salt." } });
    await isNoted("WITHDRAW");
    await saved(planText(slug, "Season, again") + ending("22"), 2);
    await schedule(slug, "2026-03-02T06:00", 3);
    await isNoted("PUBLISH", "WITHDRAW");
    await ask(withdrawAt, { input: { ...name, at: "2026-03-23T20:00", zone, reason: "Over." } });
    await isNoted("WITHDRAW");
  });
});
