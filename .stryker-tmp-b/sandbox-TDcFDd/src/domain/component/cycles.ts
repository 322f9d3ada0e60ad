/** Cycles that are named; a knot of components can hold more of them than anybody would read. */
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
export const mostCycles = 100;
type EdgesOf = (node: number) => readonly number[];

/**
 * Strongly connected groups of more than one node, or of one that leads to itself, in ascending order (Tarjan's
 * algorithm, with a stack of its own: a chain may be thousands long).
 */
function knots(nodes: readonly number[], edgesOf: EdgesOf): readonly (readonly number[])[] {
  if (stryMutAct_9fa48("60")) {
    {}
  } else {
    stryCov_9fa48("60");
    const found: number[][] = stryMutAct_9fa48("61") ? ["Stryker was here"] : (stryCov_9fa48("61"), []);
    const order = new Map<number, number>();
    const lowest = new Map<number, number>();
    const open: number[] = stryMutAct_9fa48("62") ? ["Stryker was here"] : (stryCov_9fa48("62"), []);
    const isOpen = new Set<number>();
    const lower = (node: number, to: number): void => {
      if (stryMutAct_9fa48("63")) {
        {}
      } else {
        stryCov_9fa48("63");
        lowest.set(node, stryMutAct_9fa48("64") ? Math.max(lowest.get(node)!, to) : (stryCov_9fa48("64"), Math.min(lowest.get(node)!, to)));
      }
    };
    const enter = (node: number): {
      node: number;
      next: number;
    } => {
      if (stryMutAct_9fa48("65")) {
        {}
      } else {
        stryCov_9fa48("65");
        lowest.set(node, order.size);
        order.set(node, order.size);
        open.push(node);
        isOpen.add(node);
        return stryMutAct_9fa48("66") ? {} : (stryCov_9fa48("66"), {
          node,
          next: 0
        });
      }
    };
    const leave = (node: number): void => {
      if (stryMutAct_9fa48("67")) {
        {}
      } else {
        stryCov_9fa48("67");
        if (stryMutAct_9fa48("70") ? lowest.get(node) === order.get(node) : stryMutAct_9fa48("69") ? false : stryMutAct_9fa48("68") ? true : (stryCov_9fa48("68", "69", "70"), lowest.get(node) !== order.get(node))) return;
        const group = open.splice(open.lastIndexOf(node));
        for (const each of group) isOpen.delete(each);
        if (stryMutAct_9fa48("73") ? group.length > 1 && edgesOf(node).includes(node) : stryMutAct_9fa48("72") ? false : stryMutAct_9fa48("71") ? true : (stryCov_9fa48("71", "72", "73"), (stryMutAct_9fa48("76") ? group.length <= 1 : stryMutAct_9fa48("75") ? group.length >= 1 : stryMutAct_9fa48("74") ? false : (stryCov_9fa48("74", "75", "76"), group.length > 1)) || edgesOf(node).includes(node))) found.push(group.toSorted(stryMutAct_9fa48("77") ? () => undefined : (stryCov_9fa48("77"), (a, b) => stryMutAct_9fa48("78") ? a + b : (stryCov_9fa48("78"), a - b))));
      }
    };
    for (const start of nodes) {
      if (stryMutAct_9fa48("79")) {
        {}
      } else {
        stryCov_9fa48("79");
        if (stryMutAct_9fa48("81") ? false : stryMutAct_9fa48("80") ? true : (stryCov_9fa48("80", "81"), order.has(start))) continue;
        const trail = stryMutAct_9fa48("82") ? [] : (stryCov_9fa48("82"), [enter(start)]);
        for (let top = trail.at(stryMutAct_9fa48("83") ? +1 : (stryCov_9fa48("83"), -1)); stryMutAct_9fa48("85") ? top === undefined : stryMutAct_9fa48("84") ? false : (stryCov_9fa48("84", "85"), top !== undefined); top = trail.at(stryMutAct_9fa48("86") ? +1 : (stryCov_9fa48("86"), -1))) {
          if (stryMutAct_9fa48("87")) {
            {}
          } else {
            stryCov_9fa48("87");
            const to = edgesOf(top.node)[top.next];
            stryMutAct_9fa48("88") ? top.next -= 1 : (stryCov_9fa48("88"), top.next += 1);
            if (stryMutAct_9fa48("91") ? to !== undefined : stryMutAct_9fa48("90") ? false : stryMutAct_9fa48("89") ? true : (stryCov_9fa48("89", "90", "91"), to === undefined)) {
              if (stryMutAct_9fa48("92")) {
                {}
              } else {
                stryCov_9fa48("92");
                trail.pop();
                const below = trail.at(stryMutAct_9fa48("93") ? +1 : (stryCov_9fa48("93"), -1));
                if (stryMutAct_9fa48("96") ? below === undefined : stryMutAct_9fa48("95") ? false : stryMutAct_9fa48("94") ? true : (stryCov_9fa48("94", "95", "96"), below !== undefined)) lower(below.node, lowest.get(top.node)!);
                leave(top.node);
              }
            } else if (stryMutAct_9fa48("99") ? false : stryMutAct_9fa48("98") ? true : stryMutAct_9fa48("97") ? order.has(to) : (stryCov_9fa48("97", "98", "99"), !order.has(to))) trail.push(enter(to));else if (stryMutAct_9fa48("101") ? false : stryMutAct_9fa48("100") ? true : (stryCov_9fa48("100", "101"), isOpen.has(to))) lower(top.node, order.get(to)!);
          }
        }
      }
    }
    return found.toSorted(stryMutAct_9fa48("102") ? () => undefined : (stryCov_9fa48("102"), (a, b) => stryMutAct_9fa48("103") ? a[0]! + b[0]! : (stryCov_9fa48("103"), a[0]! - b[0]!)));
  }
}

/** Every cycle through `start` among the allowed nodes (Johnson's algorithm, one start of it), up to `most`. */
function cyclesFrom(start: number, edgesOf: EdgesOf, most: number): number[][] {
  if (stryMutAct_9fa48("104")) {
    {}
  } else {
    stryCov_9fa48("104");
    const cycles: number[][] = stryMutAct_9fa48("105") ? ["Stryker was here"] : (stryCov_9fa48("105"), []);
    const blocked = new Set<number>();
    const waiting = new Map<number, Set<number>>();
    const unblock = (node: number): void => {
      if (stryMutAct_9fa48("106")) {
        {}
      } else {
        stryCov_9fa48("106");
        const freed = stryMutAct_9fa48("107") ? [] : (stryCov_9fa48("107"), [node]);
        for (let each = freed.pop(); stryMutAct_9fa48("109") ? each === undefined : stryMutAct_9fa48("108") ? false : (stryCov_9fa48("108", "109"), each !== undefined); each = freed.pop()) {
          if (stryMutAct_9fa48("110")) {
            {}
          } else {
            stryCov_9fa48("110");
            if (stryMutAct_9fa48("113") ? false : stryMutAct_9fa48("112") ? true : stryMutAct_9fa48("111") ? blocked.delete(each) : (stryCov_9fa48("111", "112", "113"), !blocked.delete(each))) continue;
            freed.push(...(stryMutAct_9fa48("114") ? waiting.get(each) && [] : (stryCov_9fa48("114"), waiting.get(each) ?? (stryMutAct_9fa48("115") ? ["Stryker was here"] : (stryCov_9fa48("115"), [])))));
            waiting.delete(each);
          }
        }
      }
    };
    const trail: {
      node: number;
      next: number;
      closed: boolean;
    }[] = stryMutAct_9fa48("116") ? [] : (stryCov_9fa48("116"), [stryMutAct_9fa48("117") ? {} : (stryCov_9fa48("117"), {
      node: start,
      next: 0,
      closed: stryMutAct_9fa48("118") ? true : (stryCov_9fa48("118"), false)
    })]);
    blocked.add(start);
    for (let top = trail.at(stryMutAct_9fa48("119") ? +1 : (stryCov_9fa48("119"), -1)); stryMutAct_9fa48("121") ? top !== undefined || cycles.length < most : stryMutAct_9fa48("120") ? false : (stryCov_9fa48("120", "121"), (stryMutAct_9fa48("123") ? top === undefined : stryMutAct_9fa48("122") ? true : (stryCov_9fa48("122", "123"), top !== undefined)) && (stryMutAct_9fa48("126") ? cycles.length >= most : stryMutAct_9fa48("125") ? cycles.length <= most : stryMutAct_9fa48("124") ? true : (stryCov_9fa48("124", "125", "126"), cycles.length < most))); top = trail.at(stryMutAct_9fa48("127") ? +1 : (stryCov_9fa48("127"), -1))) {
      if (stryMutAct_9fa48("128")) {
        {}
      } else {
        stryCov_9fa48("128");
        const to = edgesOf(top.node)[top.next];
        stryMutAct_9fa48("129") ? top.next -= 1 : (stryCov_9fa48("129"), top.next += 1);
        if (stryMutAct_9fa48("132") ? to !== start : stryMutAct_9fa48("131") ? false : stryMutAct_9fa48("130") ? true : (stryCov_9fa48("130", "131", "132"), to === start)) {
          if (stryMutAct_9fa48("133")) {
            {}
          } else {
            stryCov_9fa48("133");
            cycles.push(trail.map(stryMutAct_9fa48("134") ? () => undefined : (stryCov_9fa48("134"), ({
              node
            }) => node)));
            top.closed = stryMutAct_9fa48("135") ? false : (stryCov_9fa48("135"), true);
          }
        } else if (stryMutAct_9fa48("138") ? to !== undefined || !blocked.has(to) : stryMutAct_9fa48("137") ? false : stryMutAct_9fa48("136") ? true : (stryCov_9fa48("136", "137", "138"), (stryMutAct_9fa48("140") ? to === undefined : stryMutAct_9fa48("139") ? true : (stryCov_9fa48("139", "140"), to !== undefined)) && (stryMutAct_9fa48("141") ? blocked.has(to) : (stryCov_9fa48("141"), !blocked.has(to))))) {
          if (stryMutAct_9fa48("142")) {
            {}
          } else {
            stryCov_9fa48("142");
            blocked.add(to);
            trail.push(stryMutAct_9fa48("143") ? {} : (stryCov_9fa48("143"), {
              node: to,
              next: 0,
              closed: stryMutAct_9fa48("144") ? true : (stryCov_9fa48("144"), false)
            }));
          }
        } else if (stryMutAct_9fa48("147") ? to !== undefined : stryMutAct_9fa48("146") ? false : stryMutAct_9fa48("145") ? true : (stryCov_9fa48("145", "146", "147"), to === undefined)) {
          if (stryMutAct_9fa48("148")) {
            {}
          } else {
            stryCov_9fa48("148");
            trail.pop();
            const below = trail.at(stryMutAct_9fa48("149") ? +1 : (stryCov_9fa48("149"), -1));
            if (stryMutAct_9fa48("151") ? false : stryMutAct_9fa48("150") ? true : (stryCov_9fa48("150", "151"), top.closed)) {
              if (stryMutAct_9fa48("152")) {
                {}
              } else {
                stryCov_9fa48("152");
                unblock(top.node);
                if (stryMutAct_9fa48("155") ? below === undefined : stryMutAct_9fa48("154") ? false : stryMutAct_9fa48("153") ? true : (stryCov_9fa48("153", "154", "155"), below !== undefined)) below.closed = stryMutAct_9fa48("156") ? false : (stryCov_9fa48("156"), true);
              }
            } else {
              if (stryMutAct_9fa48("157")) {
                {}
              } else {
                stryCov_9fa48("157");
                for (const next of edgesOf(top.node)) {
                  if (stryMutAct_9fa48("158")) {
                    {}
                  } else {
                    stryCov_9fa48("158");
                    waiting.set(next, (stryMutAct_9fa48("159") ? waiting.get(next) && new Set() : (stryCov_9fa48("159"), waiting.get(next) ?? new Set())).add(top.node));
                  }
                }
              }
            }
          }
        }
      }
    }
    return cycles;
  }
}

/**
 * Every way round through a graph, as node indexes without the return to the first; each once, from its lowest index on,
 * up to `mostCycles`. Every knot is named at least once, however large the one before it.
 *
 * @param edges for each node, the nodes it leads to, each once
 */
export function findCycles(edges: readonly (readonly number[])[]): readonly (readonly number[])[] {
  if (stryMutAct_9fa48("160")) {
    {}
  } else {
    stryCov_9fa48("160");
    const cycles: number[][] = stryMutAct_9fa48("161") ? ["Stryker was here"] : (stryCov_9fa48("161"), []);
    const all = edges.map(stryMutAct_9fa48("162") ? () => undefined : (stryCov_9fa48("162"), (_, node) => node));
    for (const whole of knots(all, stryMutAct_9fa48("163") ? () => undefined : (stryCov_9fa48("163"), node => edges[node]!))) {
      if (stryMutAct_9fa48("164")) {
        {}
      } else {
        stryCov_9fa48("164");
        const open: (readonly number[])[] = stryMutAct_9fa48("165") ? [] : (stryCov_9fa48("165"), [whole]);
        for (let knot = open.shift(); stryMutAct_9fa48("167") ? knot === undefined : stryMutAct_9fa48("166") ? false : (stryCov_9fa48("166", "167"), knot !== undefined); knot = open.shift()) {
          if (stryMutAct_9fa48("168")) {
            {}
          } else {
            stryCov_9fa48("168");
            const room = stryMutAct_9fa48("169") ? mostCycles + cycles.length : (stryCov_9fa48("169"), mostCycles - cycles.length);
            if (stryMutAct_9fa48("172") ? room <= 0 || knot !== whole : stryMutAct_9fa48("171") ? false : stryMutAct_9fa48("170") ? true : (stryCov_9fa48("170", "171", "172"), (stryMutAct_9fa48("175") ? room > 0 : stryMutAct_9fa48("174") ? room < 0 : stryMutAct_9fa48("173") ? true : (stryCov_9fa48("173", "174", "175"), room <= 0)) && (stryMutAct_9fa48("177") ? knot === whole : stryMutAct_9fa48("176") ? true : (stryCov_9fa48("176", "177"), knot !== whole)))) break;
            const inside = new Set(knot);
            const within: EdgesOf = stryMutAct_9fa48("178") ? () => undefined : (stryCov_9fa48("178"), (() => {
              const within: EdgesOf = node => stryMutAct_9fa48("179") ? edges[node]! : (stryCov_9fa48("179"), edges[node]!.filter(stryMutAct_9fa48("180") ? () => undefined : (stryCov_9fa48("180"), to => inside.has(to))));
              return within;
            })());
            const [start, ...rest] = knot;
            cycles.push(...cyclesFrom(start!, within, stryMutAct_9fa48("181") ? Math.min(1, room) : (stryCov_9fa48("181"), Math.max(1, room))));
            // What is left without the start may still be knotted.
            inside.delete(start!);
            open.unshift(...knots(rest, within));
          }
        }
      }
    }
    return cycles;
  }
}