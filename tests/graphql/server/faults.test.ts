import { expect, it } from "vitest";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { openTestApp } from "../open-test-app.js";

describeOnBothDatabases("a fault of ours", (open) => {
  it("reaches the caller as one text and an id, and the log with its cause", async () => {
    const app = await openTestApp((await open()).data);
    await app.deps.data.close();
    const { status, data, errors, text } = await app.ask(`{ food(slug: "lemon") { name } __typename }`);
    expect(status).toBe(200);
    expect(data).toEqual({ food: null, __typename: "Query" });
    expect(errors).toHaveLength(1);
    expect(errors[0]?.message).toBe("An internal error occurred. Quote the request id when you report it.");
    const { code, requestId, ...rest } = errors[0]?.extensions ?? {};
    expect([code, Object.keys(rest)]).toEqual(["INTERNAL_SERVER_ERROR", []]);
    expect(text).not.toMatch(/prisma|postgres|node_modules|at /i);
    const logged = app.logged.find((line) => line.includes("a resolver failed"));
    expect(JSON.parse(logged ?? "{}")).toMatchObject({ level: 50, requestId, path: ["food"] });
    await app.close();
  });
});
