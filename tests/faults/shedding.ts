import { readFile } from "node:fs/promises";
import { anotherHousehold } from "../../bench/plan-query.js";
import { loadShippedRules } from "../../src/services/rules/load-rule-set.js";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, rules } from "../graphql/open-test-app.js";
import type { Fault } from "./fault.js";
import { startFleet } from "./fleet.js";
import { askAtRate, askInSlices, type Offered, type OfferResult } from "./offer.js";

/** Times what the service can do. */
const tooMuch = 3;

/** What it answers under that / what it can do. */
const aim = 0.8;

/** How long it is asked in turns, and under too much, in milliseconds. */
const measuring = 6_000;
const pressing = 15_000;

/** Callers in turns: enough that the service never waits for them, and few enough that nothing is turned away. */
const callers = 8;

/**
 * Finds out how many new households a second a service computes, and offers it three times as many. It must go on to answer nearly as
 * many as it can, tell the others at once to come later, and do nothing else.
 *
 * The client and the database share the machine with it, and take more of it the more is offered. So the aim is on answers for a second
 * of the service's own processor time; what that comes to on the clock is told beside.
 */
export const shedding: Fault = { name: "shedding", tries: 3, fewTries: 1, run };

interface Measured extends OfferResult {
  readonly perProcessorSecond: number;
}

/** Processor time of a process so far, in seconds; proc(5): fields 14 and 15 of `stat`, in hundredths. */
async function processorSeconds(pid: number | undefined): Promise<number> {
  const fields = (await readFile(`/proc/${String(pid)}/stat`, "utf8")).split(") ")[1]?.split(" ") ?? [];
  return (Number(fields[11]) + Number(fields[12])) / 100;
}

async function run(tries: number): ReturnType<Fault["run"]> {
  const fleet = await startFleet(1);
  const pid = fleet.services[0]?.child.pid;
  const measured = async (asking: () => Promise<OfferResult>): Promise<Measured> => {
    const before = await processorSeconds(pid);
    const found = await asking();
    return { ...found, perProcessorSecond: found.answered / ((await processorSeconds(pid)) - before) };
  };
  try {
    await fleet.look(async ({ data }) => {
      const log = { info: () => undefined, warn: console.error, error: console.error };
      const deps = { data, clock: () => new Date(), log, knownRules: new Map() };
      await loadShippedRules(deps, rules);
      const loaded = await loadSeeds(deps, demo);
      if (!loaded.ok) throw new Error(JSON.stringify(loaded.problems));
    });
    let household = 0;
    const { path, headers, body } = anotherHousehold;
    const offered: Offered = {
      ...{ address: fleet.address(), path, headers },
      body: () => body.replace('"{{n}}"', String((household += 1))),
    };
    await askInSlices(offered, callers, measuring);
    const rounds: { readonly usual: Measured; readonly pressed: Measured }[] = [];
    for (let round = 0; round < tries; round += 1) {
      const usual = await measured(() => askInSlices(offered, callers, measuring));
      const pressed = await measured(() => askAtRate(offered, tooMuch * usual.answeredPerSecond, pressing));
      rounds.push({ usual, pressed });
    }
    type Of = (round: (typeof rounds)[number]) => number;
    const median = (of: Of): number => rounds.map(of).toSorted((a, b) => a - b)[tries >> 1] ?? 0;
    const sum = (of: Of): number => rounds.reduce((all, each) => all + of(each), 0);
    const goodput = median(({ usual, pressed }) => pressed.perProcessorSecond / usual.perProcessorSecond);
    const onTheClock = median(({ usual, pressed }) => pressed.answeredPerSecond / usual.answeredPerSecond);
    return {
      ...{ tries, lost: 0, failed: sum(({ usual, pressed }) => usual.failed + pressed.failed) },
      ...{ goodput: Number(goodput.toFixed(3)), goodputOnTheClock: Number(onTheClock.toFixed(3)) },
      tooLittle: goodput < aim ? 1 : 0,
      capacityPerSecond: Math.round(median(({ usual }) => usual.answeredPerSecond)),
      p99Ms: {
        atCapacity: median(({ usual }) => usual.p99),
        underTooMuch: median(({ pressed }) => pressed.p99),
        shed: median(({ pressed }) => pressed.p99OfShed),
      },
      p50Ms: { atCapacity: median(({ usual }) => usual.p50), underTooMuch: median(({ pressed }) => pressed.p50) },
      ...{ answered: sum(({ pressed }) => pressed.answered), shed: sum(({ pressed }) => pressed.shed) },
    };
  } finally {
    await fleet.stop();
  }
}
