import { around, get, graphql, times, type AttackRequest, type Target } from "./attack-request.js";

/** Many schedules at once, and times and zones that are neither. */
export function scheduleAttacks({ publisher, plans }: Target): readonly AttackRequest[] {
  const slug = around(plans, 0);
  const authorised = (request: AttackRequest): AttackRequest => ({ ...request, authorised: true });
  const schedule = (count: number, at: string, zone: string): string =>
    `mutation { ${times(
      count,
      (number) =>
        `a${String(number)}: schedulePublication(input: { publisher: "${publisher}", slug: "${slug}", expectedVersion: ${String(number + 1)}, at: "${at}", zone: "${zone}" }) { problems { message } }`,
    )} }`;
  const zones = [
    "Europe/Berlin",
    "Europa/Wien",
    "a".repeat(60),
    "/".repeat(60),
    "a/".repeat(5_000),
    "\\u0000",
    "ß".repeat(60),
  ];
  const hours = [
    "2026-12-24T06:00",
    "9".repeat(5_000),
    "2026-12-24T06:00:00.".repeat(500),
    "+275760-09-13T00:00",
    "-000001-01-01T00:00",
  ];
  return [
    ...zones.flatMap((zone) => hours.map((at) => authorised(graphql("a schedule", schedule(1, at, zone))))),
    ...[10, 100].map((count) =>
      authorised(graphql(`${String(count)} schedules`, schedule(count, "2026-12-24T06:00", "Europe/Berlin"))),
    ),
    authorised(get("what is scheduled", `/v1/publishers/${publisher}/scheduled?first=100`)),
    get("what is scheduled, by nobody", `/v1/publishers/${"a".repeat(5_000)}/scheduled?state=${"x".repeat(5_000)}`),
  ];
}
