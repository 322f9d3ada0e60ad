// @ts-nocheck
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../kit/databases.js";
import { demo, demoBundle, openTestApp, renamed, type TestApp } from "./open-test-app.js";

interface Page {
  readonly edges: readonly { readonly cursor: string; readonly node: { readonly slug: string } }[];
  readonly pageInfo: {
    readonly hasNextPage: boolean;
    readonly hasPreviousPage: boolean;
    readonly startCursor: string | null;
    readonly endCursor: string | null;
  };
}

const query = `query Page($first: Int, $after: String, $last: Int, $before: String) {
  plans(first: $first, after: $after, last: $last, before: $before) {
    edges { cursor node { slug } }
    pageInfo { hasNextPage hasPreviousPage startCursor endCursor }
  }
}`;

describeOnBothDatabases("pages of plans", (open) => {
  let app: TestApp;
  const old = ["a", "b", "c", "d", "e", "f", "g"].map((letter) => `plan-${letter}`);

  const publish = (slug: string, at: string) =>
    app.deps.data.revisions.publish(renamed(demoBundle("bean-night"), slug), new Date(at));

  const page = async (variables: Record<string, unknown>): Promise<Page> => {
    const { data, errors } = await app.ask(query, variables);
    expect(errors).toEqual([]);
    return data?.["plans"] as Page;
  };

  const slugsOf = ({ edges }: Page): readonly string[] => edges.map(({ node }) => node.slug);

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await app.deps.data.publishers.save(demo.publisher);
    for (const [index, slug] of old.entries()) {
      await publish(slug, index < 5 ? "2026-01-01T00:00:00Z" : `2026-01-0${index}T00:00:00Z`);
    }
  });
  afterAll(() => app.close());

  it("O-39: show each of seven plans once, five of one moment, while another is published between the pages", async () => {
    const seen: string[] = [];
    let after: string | null = null;
    for (let turn = 0; turn < 3; turn += 1) {
      const found: Page = await page({ first: 3, after });
      seen.push(...slugsOf(found));
      after = found.pageInfo.endCursor;
      if (turn === 0) await publish("newcomer", "2026-02-01T00:00:00Z");
      expect(found.pageInfo.hasNextPage).toBe(turn < 2);
      expect(found.pageInfo.hasPreviousPage).toBe(turn > 0);
    }
    expect(seen.toSorted()).toEqual(old);
  });

  it("give the same order backwards", async () => {
    const forwards = slugsOf(await page({ first: 100 }));
    const last = await page({ last: 3 });
    expect(slugsOf(last)).toEqual(forwards.slice(-3));
    expect(last.pageInfo).toMatchObject({ hasNextPage: false, hasPreviousPage: true });
    const before = await page({ last: 3, before: last.pageInfo.startCursor });
    expect(slugsOf(before)).toEqual(forwards.slice(-6, -3));
  });

  it("are empty past the end, without cursors", async () => {
    const all = await page({ first: 100 });
    const past = await page({ first: 3, after: all.pageInfo.endCursor });
    expect(past.edges).toEqual([]);
    expect(past.pageInfo).toMatchObject({ hasNextPage: false, startCursor: null, endCursor: null });
  });
});
