// @ts-nocheck
function stryNS_9fa48() {
  var g = typeof globalThis === 'object' && globalThis && globalThis.Math === Math && globalThis || new Function("return this")();
  var ns = g.__stryker__ || (g.__stryker__ = {});
  if (ns.activeMutant === undefined && g.process && g.process.env && g.process.env.__STRYKER_ACTIVE_MUTANT__) {
    ns.activeMutant = g.process.env.__STRYKER_ACTIVE_MUTANT__;
  }
  function retrieveNS() {
    return ns;
  }
  stryNS_9fa48 = retrieveNS;
  return retrieveNS();
}
stryNS_9fa48();
function stryCov_9fa48() {
  var ns = stryNS_9fa48();
  var cov = ns.mutantCoverage || (ns.mutantCoverage = {
    static: {},
    perTest: {}
  });
  function cover() {
    var c = cov.static;
    if (ns.currentTestId) {
      c = cov.perTest[ns.currentTestId] = cov.perTest[ns.currentTestId] || {};
    }
    var a = arguments;
    for (var i = 0; i < a.length; i++) {
      c[a[i]] = (c[a[i]] || 0) + 1;
    }
  }
  stryCov_9fa48 = cover;
  cover.apply(null, arguments);
}
function stryMutAct_9fa48(id) {
  var ns = stryNS_9fa48();
  function isActive(id) {
    if (ns.activeMutant === id) {
      if (ns.hitCount !== void 0 && ++ns.hitCount > ns.hitLimit) {
        throw new Error('Stryker: Hit count limit reached (' + ns.hitCount + ')');
      }
      return true;
    }
    return false;
  }
  stryMutAct_9fa48 = isActive;
  return isActive(id);
}
import type { Step } from "../model/component.js";
import type { Household } from "../model/household.js";
import type { SessionInput, SessionWork, StepRef } from "../prep-session/session.js";
import { lineContext } from "./line-context.js";
import type { ScaledLine, ScaledPlan } from "./scaled.js";
interface Worked {
  readonly work: SessionWork;
  readonly lines: readonly ScaledLine[];
}

/** What is on hand in full is not made, so nothing waits for it. */
const uses = stryMutAct_9fa48("2427") ? () => undefined : (stryCov_9fa48("2427"), (() => {
  const uses = (lines: readonly ScaledLine[], made: ReadonlySet<string>): SessionWork["uses"] => lines.flatMap(stryMutAct_9fa48("2428") ? () => undefined : (stryCov_9fa48("2428"), ({
    line,
    item
  }) => (stryMutAct_9fa48("2431") ? item.kind === "COMPONENT" || made.has(item.component) : stryMutAct_9fa48("2430") ? false : stryMutAct_9fa48("2429") ? true : (stryCov_9fa48("2429", "2430", "2431"), (stryMutAct_9fa48("2433") ? item.kind !== "COMPONENT" : stryMutAct_9fa48("2432") ? true : (stryCov_9fa48("2432", "2433"), item.kind === (stryMutAct_9fa48("2434") ? "" : (stryCov_9fa48("2434"), "COMPONENT")))) && made.has(item.component))) ? stryMutAct_9fa48("2435") ? [] : (stryCov_9fa48("2435"), [stryMutAct_9fa48("2436") ? {} : (stryCov_9fa48("2436"), {
    line: line.id,
    component: item.component
  })]) : stryMutAct_9fa48("2437") ? ["Stryker was here"] : (stryCov_9fa48("2437"), [])));
  return uses;
})());

/** What is made in the session: every component of which something is made, and the meals that are eaten on its day. */
function workOf({
  components,
  meals
}: ScaledPlan): readonly Worked[] {
  if (stryMutAct_9fa48("2438")) {
    {}
  } else {
    stryCov_9fa48("2438");
    const slugs = new Set(components.flatMap(stryMutAct_9fa48("2439") ? () => undefined : (stryCov_9fa48("2439"), ({
      component,
      batches
    }) => (stryMutAct_9fa48("2443") ? batches <= 0 : stryMutAct_9fa48("2442") ? batches >= 0 : stryMutAct_9fa48("2441") ? false : stryMutAct_9fa48("2440") ? true : (stryCov_9fa48("2440", "2441", "2442", "2443"), batches > 0)) ? stryMutAct_9fa48("2444") ? [] : (stryCov_9fa48("2444"), [component.slug]) : stryMutAct_9fa48("2445") ? ["Stryker was here"] : (stryCov_9fa48("2445"), []))));
    const made = stryMutAct_9fa48("2446") ? components.map(({
      component,
      route,
      batches,
      loads,
      lines
    }): Worked => {
      const steps: readonly Step[] = route?.steps ?? component.steps;
      const {
        slug,
        title
      } = component;
      return {
        work: {
          kind: "COMPONENT",
          slug,
          title,
          steps,
          batches,
          loads,
          uses: uses(lines, slugs)
        },
        lines
      };
    }) : (stryCov_9fa48("2446"), components.filter(stryMutAct_9fa48("2447") ? () => undefined : (stryCov_9fa48("2447"), ({
      batches
    }) => stryMutAct_9fa48("2451") ? batches <= 0 : stryMutAct_9fa48("2450") ? batches >= 0 : stryMutAct_9fa48("2449") ? false : stryMutAct_9fa48("2448") ? true : (stryCov_9fa48("2448", "2449", "2450", "2451"), batches > 0))).map(({
      component,
      route,
      batches,
      loads,
      lines
    }): Worked => {
      if (stryMutAct_9fa48("2452")) {
        {}
      } else {
        stryCov_9fa48("2452");
        const steps: readonly Step[] = stryMutAct_9fa48("2453") ? route?.steps && component.steps : (stryCov_9fa48("2453"), (stryMutAct_9fa48("2454") ? route.steps : (stryCov_9fa48("2454"), route?.steps)) ?? component.steps);
        const {
          slug,
          title
        } = component;
        return stryMutAct_9fa48("2455") ? {} : (stryCov_9fa48("2455"), {
          work: stryMutAct_9fa48("2456") ? {} : (stryCov_9fa48("2456"), {
            kind: stryMutAct_9fa48("2457") ? "" : (stryCov_9fa48("2457"), "COMPONENT"),
            slug,
            title,
            steps,
            batches,
            loads,
            uses: uses(lines, slugs)
          }),
          lines
        });
      }
    }));
    const eaten = stryMutAct_9fa48("2458") ? meals.map(({
      meal: {
        slug,
        title,
        steps
      },
      factor,
      lines
    }): Worked => ({
      work: {
        kind: "MEAL",
        slug,
        title,
        steps,
        batches: factor,
        loads: 1,
        uses: uses(lines, slugs)
      },
      lines
    })) : (stryCov_9fa48("2458"), meals.filter(stryMutAct_9fa48("2459") ? () => undefined : (stryCov_9fa48("2459"), ({
      meal
    }) => stryMutAct_9fa48("2462") ? meal.day !== 0 : stryMutAct_9fa48("2461") ? false : stryMutAct_9fa48("2460") ? true : (stryCov_9fa48("2460", "2461", "2462"), meal.day === 0))).map(stryMutAct_9fa48("2463") ? () => undefined : (stryCov_9fa48("2463"), ({
      meal: {
        slug,
        title,
        steps
      },
      factor,
      lines
    }): Worked => stryMutAct_9fa48("2464") ? {} : (stryCov_9fa48("2464"), {
      work: stryMutAct_9fa48("2465") ? {} : (stryCov_9fa48("2465"), {
        kind: stryMutAct_9fa48("2466") ? "" : (stryCov_9fa48("2466"), "MEAL"),
        slug,
        title,
        steps,
        batches: factor,
        loads: 1,
        uses: uses(lines, slugs)
      }),
      lines
    }))));
    return stryMutAct_9fa48("2467") ? [] : (stryCov_9fa48("2467"), [...made, ...eaten]);
  }
}
const key = stryMutAct_9fa48("2468") ? () => undefined : (stryCov_9fa48("2468"), (() => {
  const key = ({
    kind,
    slug,
    step
  }: StepRef): string => JSON.stringify(stryMutAct_9fa48("2469") ? [] : (stryCov_9fa48("2469"), [kind, slug, step]));
  return key;
})());

/** Whether one step has to come before another anyway, through the orders that the plan itself gives. */
function precedes(all: readonly Worked[]): (first: StepRef, then: StepRef) => boolean {
  if (stryMutAct_9fa48("2470")) {
    {}
  } else {
    stryCov_9fa48("2470");
    const next = new Map<string, string[]>();
    const add = (before: StepRef, after: StepRef): void => {
      if (stryMutAct_9fa48("2471")) {
        {}
      } else {
        stryCov_9fa48("2471");
        const known = next.get(key(before));
        if (stryMutAct_9fa48("2474") ? known !== undefined : stryMutAct_9fa48("2473") ? false : stryMutAct_9fa48("2472") ? true : (stryCov_9fa48("2472", "2473", "2474"), known === undefined)) next.set(key(before), stryMutAct_9fa48("2475") ? [] : (stryCov_9fa48("2475"), [key(after)]));else known.push(key(after));
      }
    };
    for (const {
      work
    } of all) {
      if (stryMutAct_9fa48("2476")) {
        {}
      } else {
        stryCov_9fa48("2476");
        for (const step of work.steps) {
          if (stryMutAct_9fa48("2477")) {
            {}
          } else {
            stryCov_9fa48("2477");
            const ref = stryMutAct_9fa48("2478") ? {} : (stryCov_9fa48("2478"), {
              kind: work.kind,
              slug: work.slug,
              step: step.id
            });
            for (const earlier of step.after) add(stryMutAct_9fa48("2479") ? {} : (stryCov_9fa48("2479"), {
              ...ref,
              step: earlier
            }), ref);
            for (const {
              component
            } of work.uses) {
              if (stryMutAct_9fa48("2480")) {
                {}
              } else {
                stryCov_9fa48("2480");
                const from = all.find(stryMutAct_9fa48("2481") ? () => undefined : (stryCov_9fa48("2481"), each => stryMutAct_9fa48("2484") ? each.work.kind === "COMPONENT" || each.work.slug === component : stryMutAct_9fa48("2483") ? false : stryMutAct_9fa48("2482") ? true : (stryCov_9fa48("2482", "2483", "2484"), (stryMutAct_9fa48("2486") ? each.work.kind !== "COMPONENT" : stryMutAct_9fa48("2485") ? true : (stryCov_9fa48("2485", "2486"), each.work.kind === (stryMutAct_9fa48("2487") ? "" : (stryCov_9fa48("2487"), "COMPONENT")))) && (stryMutAct_9fa48("2489") ? each.work.slug !== component : stryMutAct_9fa48("2488") ? true : (stryCov_9fa48("2488", "2489"), each.work.slug === component)))));
                for (const made of stryMutAct_9fa48("2490") ? from?.work.steps && [] : (stryCov_9fa48("2490"), (stryMutAct_9fa48("2491") ? from.work.steps : (stryCov_9fa48("2491"), from?.work.steps)) ?? (stryMutAct_9fa48("2492") ? ["Stryker was here"] : (stryCov_9fa48("2492"), [])))) add(stryMutAct_9fa48("2493") ? {} : (stryCov_9fa48("2493"), {
                  kind: stryMutAct_9fa48("2494") ? "" : (stryCov_9fa48("2494"), "COMPONENT"),
                  slug: component,
                  step: made.id
                }), ref);
              }
            }
          }
        }
      }
    }
    return (first, then) => {
      if (stryMutAct_9fa48("2495")) {
        {}
      } else {
        stryCov_9fa48("2495");
        const seen = new Set(stryMutAct_9fa48("2496") ? [] : (stryCov_9fa48("2496"), [key(first)]));
        const open = stryMutAct_9fa48("2497") ? [] : (stryCov_9fa48("2497"), [key(first)]);
        for (let at = open.pop(); stryMutAct_9fa48("2499") ? at === undefined : stryMutAct_9fa48("2498") ? false : (stryCov_9fa48("2498", "2499"), at !== undefined); at = open.pop()) {
          if (stryMutAct_9fa48("2500")) {
            {}
          } else {
            stryCov_9fa48("2500");
            if (stryMutAct_9fa48("2503") ? at !== key(then) : stryMutAct_9fa48("2502") ? false : stryMutAct_9fa48("2501") ? true : (stryCov_9fa48("2501", "2502", "2503"), at === key(then))) return stryMutAct_9fa48("2504") ? false : (stryCov_9fa48("2504"), true);
            for (const after of stryMutAct_9fa48("2505") ? next.get(at) && [] : (stryCov_9fa48("2505"), next.get(at) ?? (stryMutAct_9fa48("2506") ? ["Stryker was here"] : (stryCov_9fa48("2506"), [])))) {
              if (stryMutAct_9fa48("2507")) {
                {}
              } else {
                stryCov_9fa48("2507");
                if (stryMutAct_9fa48("2510") ? false : stryMutAct_9fa48("2509") ? true : stryMutAct_9fa48("2508") ? seen.has(after) : (stryCov_9fa48("2508", "2509", "2510"), !seen.has(after))) open.push(after);
                seen.add(after);
              }
            }
          }
        }
        return stryMutAct_9fa48("2511") ? true : (stryCov_9fa48("2511"), false);
      }
    };
  }
}

/**
 * Parts of one food that have to be taken before others (zest before juice), as orders between the steps that use them.
 * Where the plan itself asks for the opposite, the plan stands: the fruit is then not shared, and no order is added.
 */
function partOrder(all: readonly Worked[], scaled: ScaledPlan): SessionInput["extraOrder"] {
  if (stryMutAct_9fa48("2512")) {
    {}
  } else {
    stryCov_9fa48("2512");
    const {
      foods
    } = lineContext(scaled.bundle);
    const users = new Map<string, StepRef[]>();
    for (const {
      work,
      lines
    } of all) {
      if (stryMutAct_9fa48("2513")) {
        {}
      } else {
        stryCov_9fa48("2513");
        for (const step of work.steps) {
          if (stryMutAct_9fa48("2514")) {
            {}
          } else {
            stryCov_9fa48("2514");
            for (const {
              line,
              item
            } of lines) {
              if (stryMutAct_9fa48("2515")) {
                {}
              } else {
                stryCov_9fa48("2515");
                if (stryMutAct_9fa48("2518") ? (item.kind !== "FOOD" || item.part === null) && !step.lines.includes(line.id) : stryMutAct_9fa48("2517") ? false : stryMutAct_9fa48("2516") ? true : (stryCov_9fa48("2516", "2517", "2518"), (stryMutAct_9fa48("2520") ? item.kind !== "FOOD" && item.part === null : stryMutAct_9fa48("2519") ? false : (stryCov_9fa48("2519", "2520"), (stryMutAct_9fa48("2522") ? item.kind === "FOOD" : stryMutAct_9fa48("2521") ? false : (stryCov_9fa48("2521", "2522"), item.kind !== (stryMutAct_9fa48("2523") ? "" : (stryCov_9fa48("2523"), "FOOD")))) || (stryMutAct_9fa48("2525") ? item.part !== null : stryMutAct_9fa48("2524") ? false : (stryCov_9fa48("2524", "2525"), item.part === null)))) || (stryMutAct_9fa48("2526") ? step.lines.includes(line.id) : (stryCov_9fa48("2526"), !step.lines.includes(line.id))))) continue;
                const part = JSON.stringify(stryMutAct_9fa48("2527") ? [] : (stryCov_9fa48("2527"), [item.food, item.part]));
                users.set(part, stryMutAct_9fa48("2528") ? [] : (stryCov_9fa48("2528"), [...(stryMutAct_9fa48("2529") ? users.get(part) && [] : (stryCov_9fa48("2529"), users.get(part) ?? (stryMutAct_9fa48("2530") ? ["Stryker was here"] : (stryCov_9fa48("2530"), [])))), stryMutAct_9fa48("2531") ? {} : (stryCov_9fa48("2531"), {
                  kind: work.kind,
                  slug: work.slug,
                  step: step.id
                })]));
              }
            }
          }
        }
      }
    }
    const forced = precedes(all);
    return (stryMutAct_9fa48("2532") ? [] : (stryCov_9fa48("2532"), [...foods.values()])).flatMap(stryMutAct_9fa48("2533") ? () => undefined : (stryCov_9fa48("2533"), food => food.parts.flatMap(stryMutAct_9fa48("2534") ? () => undefined : (stryCov_9fa48("2534"), part => part.after.flatMap(earlier => {
      if (stryMutAct_9fa48("2535")) {
        {}
      } else {
        stryCov_9fa48("2535");
        const first = stryMutAct_9fa48("2536") ? users.get(JSON.stringify([food.slug, earlier])) && [] : (stryCov_9fa48("2536"), users.get(JSON.stringify(stryMutAct_9fa48("2537") ? [] : (stryCov_9fa48("2537"), [food.slug, earlier]))) ?? (stryMutAct_9fa48("2538") ? ["Stryker was here"] : (stryCov_9fa48("2538"), [])));
        const then = stryMutAct_9fa48("2539") ? users.get(JSON.stringify([food.slug, part.name])) && [] : (stryCov_9fa48("2539"), users.get(JSON.stringify(stryMutAct_9fa48("2540") ? [] : (stryCov_9fa48("2540"), [food.slug, part.name]))) ?? (stryMutAct_9fa48("2541") ? ["Stryker was here"] : (stryCov_9fa48("2541"), [])));
        return first.flatMap(stryMutAct_9fa48("2542") ? () => undefined : (stryCov_9fa48("2542"), before => stryMutAct_9fa48("2543") ? then.map(after => ({
          before,
          after
        })) : (stryCov_9fa48("2543"), then.filter(stryMutAct_9fa48("2544") ? () => undefined : (stryCov_9fa48("2544"), after => stryMutAct_9fa48("2547") ? key(after) !== key(before) || !forced(after, before) : stryMutAct_9fa48("2546") ? false : stryMutAct_9fa48("2545") ? true : (stryCov_9fa48("2545", "2546", "2547"), (stryMutAct_9fa48("2549") ? key(after) === key(before) : stryMutAct_9fa48("2548") ? true : (stryCov_9fa48("2548", "2549"), key(after) !== key(before))) && (stryMutAct_9fa48("2550") ? forced(after, before) : (stryCov_9fa48("2550"), !forced(after, before)))))).map(stryMutAct_9fa48("2551") ? () => undefined : (stryCov_9fa48("2551"), after => stryMutAct_9fa48("2552") ? {} : (stryCov_9fa48("2552"), {
          before,
          after
        }))))));
      }
    })))));
  }
}

/** The work of a scaled plan's session, for `planSession`. */
export function sessionInput(scaled: ScaledPlan, {
  session
}: Household): SessionInput {
  if (stryMutAct_9fa48("2553")) {
    {}
  } else {
    stryCov_9fa48("2553");
    const all = workOf(scaled);
    return stryMutAct_9fa48("2554") ? {} : (stryCov_9fa48("2554"), {
      work: all.map(stryMutAct_9fa48("2555") ? () => undefined : (stryCov_9fa48("2555"), ({
        work
      }) => work)),
      kitchen: scaled.bundle.plan.kitchen,
      start: (stryMutAct_9fa48("2558") ? session !== null : stryMutAct_9fa48("2557") ? false : stryMutAct_9fa48("2556") ? true : (stryCov_9fa48("2556", "2557", "2558"), session === null)) ? null : stryMutAct_9fa48("2559") ? {} : (stryCov_9fa48("2559"), {
        instant: session.start,
        zone: session.zone
      }),
      evening: null,
      extraOrder: partOrder(all, scaled)
    });
  }
}