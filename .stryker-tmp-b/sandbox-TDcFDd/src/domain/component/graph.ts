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
import type { Component } from "../model/component.js";
import type { Line } from "../model/line.js";
import { findCycles } from "./cycles.js";
export interface ComponentGraph {
  /** An order to make those in that a meal leads to: each after what it uses. Means nothing where there are `cycles`. */
  readonly makeOrder: readonly number[];
  /** Each as slugs from a component back to itself: ["dal", "stock", "dal"]. Every way round is one (cycles.ts). */
  readonly cycles: readonly (readonly string[])[];
  /** Slugs of components that no meal leads to. */
  readonly unreached: readonly string[];
}

/** Indexes of the components that some lines use; names that are not there are somebody else's problem. */
const usedBy = (lines: readonly Line[], indexOf: ReadonlyMap<string, number>): number[] => {
  if (stryMutAct_9fa48("227")) {
    {}
  } else {
    stryCov_9fa48("227");
    const used = new Set<number>();
    for (const {
      item
    } of lines) {
      if (stryMutAct_9fa48("228")) {
        {}
      } else {
        stryCov_9fa48("228");
        const index = (stryMutAct_9fa48("231") ? item.kind !== "COMPONENT" : stryMutAct_9fa48("230") ? false : stryMutAct_9fa48("229") ? true : (stryCov_9fa48("229", "230", "231"), item.kind === (stryMutAct_9fa48("232") ? "" : (stryCov_9fa48("232"), "COMPONENT")))) ? indexOf.get(item.component) : undefined;
        if (stryMutAct_9fa48("235") ? index === undefined : stryMutAct_9fa48("234") ? false : stryMutAct_9fa48("233") ? true : (stryCov_9fa48("233", "234", "235"), index !== undefined)) used.add(index);
      }
    }
    return stryMutAct_9fa48("236") ? [] : (stryCov_9fa48("236"), [...used]);
  }
};

/** Every way to use a component counts, so that no choice of route can close a cycle. */
const allLines = stryMutAct_9fa48("237") ? () => undefined : (stryCov_9fa48("237"), (() => {
  const allLines = ({
    lines,
    routes
  }: Component): readonly Line[] => (stryMutAct_9fa48("240") ? routes.length !== 0 : stryMutAct_9fa48("239") ? false : stryMutAct_9fa48("238") ? true : (stryCov_9fa48("238", "239", "240"), routes.length === 0)) ? lines : stryMutAct_9fa48("241") ? [] : (stryCov_9fa48("241"), [...lines, ...routes.flatMap(stryMutAct_9fa48("242") ? () => undefined : (stryCov_9fa48("242"), route => route.lines))]);
  return allLines;
})());

/**
 * Walks the components depth first, with a stack of its own (a chain may be thousands long). A component that is reached twice is
 * no cycle.
 *
 * @param roots lines of the meals
 */
export function componentGraph(components: readonly Component[], roots: readonly Line[]): ComponentGraph {
  if (stryMutAct_9fa48("243")) {
    {}
  } else {
    stryCov_9fa48("243");
    const indexOf = new Map(components.map(stryMutAct_9fa48("244") ? () => undefined : (stryCov_9fa48("244"), ({
      slug
    }, index) => stryMutAct_9fa48("245") ? [] : (stryCov_9fa48("245"), [slug, index]))));
    const uses = components.map(stryMutAct_9fa48("246") ? () => undefined : (stryCov_9fa48("246"), component => usedBy(allLines(component), indexOf)));
    const seen = new Uint8Array(components.length);
    const makeOrder: number[] = stryMutAct_9fa48("247") ? ["Stryker was here"] : (stryCov_9fa48("247"), []);
    const slugOf = stryMutAct_9fa48("248") ? () => undefined : (stryCov_9fa48("248"), (() => {
      const slugOf = (index: number): string => stryMutAct_9fa48("249") ? components[index]?.slug && "" : (stryCov_9fa48("249"), (stryMutAct_9fa48("250") ? components[index].slug : (stryCov_9fa48("250"), components[index]?.slug)) ?? (stryMutAct_9fa48("251") ? "Stryker was here!" : (stryCov_9fa48("251"), "")));
      return slugOf;
    })());
    const walk = (start: number): void => {
      if (stryMutAct_9fa48("252")) {
        {}
      } else {
        stryCov_9fa48("252");
        const trail: {
          readonly index: number;
          next: number;
        }[] = stryMutAct_9fa48("253") ? [] : (stryCov_9fa48("253"), [stryMutAct_9fa48("254") ? {} : (stryCov_9fa48("254"), {
          index: start,
          next: 0
        })]);
        seen[start] = 1;
        for (let top = trail.at(stryMutAct_9fa48("255") ? +1 : (stryCov_9fa48("255"), -1)); stryMutAct_9fa48("257") ? top === undefined : stryMutAct_9fa48("256") ? false : (stryCov_9fa48("256", "257"), top !== undefined); top = trail.at(stryMutAct_9fa48("258") ? +1 : (stryCov_9fa48("258"), -1))) {
          if (stryMutAct_9fa48("259")) {
            {}
          } else {
            stryCov_9fa48("259");
            const to = stryMutAct_9fa48("260") ? uses[top.index][top.next] : (stryCov_9fa48("260"), uses[top.index]?.[top.next]);
            stryMutAct_9fa48("261") ? top.next -= 1 : (stryCov_9fa48("261"), top.next += 1);
            if (stryMutAct_9fa48("264") ? to !== undefined : stryMutAct_9fa48("263") ? false : stryMutAct_9fa48("262") ? true : (stryCov_9fa48("262", "263", "264"), to === undefined)) {
              if (stryMutAct_9fa48("265")) {
                {}
              } else {
                stryCov_9fa48("265");
                makeOrder.push(top.index);
                trail.pop();
              }
            } else if (stryMutAct_9fa48("268") ? seen[to] !== 0 : stryMutAct_9fa48("267") ? false : stryMutAct_9fa48("266") ? true : (stryCov_9fa48("266", "267", "268"), seen[to] === 0)) {
              if (stryMutAct_9fa48("269")) {
                {}
              } else {
                stryCov_9fa48("269");
                seen[to] = 1;
                trail.push(stryMutAct_9fa48("270") ? {} : (stryCov_9fa48("270"), {
                  index: to,
                  next: 0
                }));
              }
            }
          }
        }
      }
    };
    for (const index of usedBy(roots, indexOf)) if (stryMutAct_9fa48("273") ? seen[index] !== 0 : stryMutAct_9fa48("272") ? false : stryMutAct_9fa48("271") ? true : (stryCov_9fa48("271", "272", "273"), seen[index] === 0)) walk(index);
    const unreached = stryMutAct_9fa48("274") ? components.map(({
      slug
    }) => slug) : (stryCov_9fa48("274"), components.filter(stryMutAct_9fa48("275") ? () => undefined : (stryCov_9fa48("275"), (_, index) => stryMutAct_9fa48("278") ? seen[index] !== 0 : stryMutAct_9fa48("277") ? false : stryMutAct_9fa48("276") ? true : (stryCov_9fa48("276", "277", "278"), seen[index] === 0))).map(stryMutAct_9fa48("279") ? () => undefined : (stryCov_9fa48("279"), ({
      slug
    }) => slug)));
    // Faults of what no meal leads to are faults too, and a draft should hear of all its faults at once.
    const cycles = findCycles(uses).map(stryMutAct_9fa48("280") ? () => undefined : (stryCov_9fa48("280"), cycle => (stryMutAct_9fa48("281") ? [] : (stryCov_9fa48("281"), [...cycle, stryMutAct_9fa48("282") ? cycle[0] && -1 : (stryCov_9fa48("282"), cycle[0] ?? (stryMutAct_9fa48("283") ? +1 : (stryCov_9fa48("283"), -1)))])).map(slugOf)));
    return stryMutAct_9fa48("284") ? {} : (stryCov_9fa48("284"), {
      makeOrder,
      cycles,
      unreached
    });
  }
}