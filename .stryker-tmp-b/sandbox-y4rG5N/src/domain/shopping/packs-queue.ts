/** A binary heap of numbered labels: the least first key leaves first, then the least second, then the oldest. */
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
export class LabelQueue {
  private readonly labels: number[] = stryMutAct_9fa48("440") ? ["Stryker was here"] : (stryCov_9fa48("440"), []);
  private readonly firsts: number[] = stryMutAct_9fa48("441") ? ["Stryker was here"] : (stryCov_9fa48("441"), []);
  private readonly seconds: number[] = stryMutAct_9fa48("442") ? ["Stryker was here"] : (stryCov_9fa48("442"), []);
  push(label: number, first: number, second: number): void {
    if (stryMutAct_9fa48("443")) {
      {}
    } else {
      stryCov_9fa48("443");
      let at = this.labels.length;
      while (stryMutAct_9fa48("446") ? at <= 0 : stryMutAct_9fa48("445") ? at >= 0 : stryMutAct_9fa48("444") ? false : (stryCov_9fa48("444", "445", "446"), at > 0)) {
        if (stryMutAct_9fa48("447")) {
          {}
        } else {
          stryCov_9fa48("447");
          const above = (stryMutAct_9fa48("448") ? at + 1 : (stryCov_9fa48("448"), at - 1)) >> 1;
          if (stryMutAct_9fa48("451") ? false : stryMutAct_9fa48("450") ? true : stryMutAct_9fa48("449") ? this.comesBefore(first, second, label, above) : (stryCov_9fa48("449", "450", "451"), !this.comesBefore(first, second, label, above))) break;
          this.move(above, at);
          at = above;
        }
      }
      this.put(at, label, first, second);
    }
  }

  /** null when empty. */
  pop(): number | null {
    if (stryMutAct_9fa48("452")) {
      {}
    } else {
      stryCov_9fa48("452");
      const top = this.labels[0];
      if (stryMutAct_9fa48("455") ? top !== undefined : stryMutAct_9fa48("454") ? false : stryMutAct_9fa48("453") ? true : (stryCov_9fa48("453", "454", "455"), top === undefined)) return null;
      const label = this.labels.pop()!;
      const [first, second] = stryMutAct_9fa48("456") ? [] : (stryCov_9fa48("456"), [this.firsts.pop()!, this.seconds.pop()!]);
      const size = this.labels.length;
      if (stryMutAct_9fa48("459") ? size !== 0 : stryMutAct_9fa48("458") ? false : stryMutAct_9fa48("457") ? true : (stryCov_9fa48("457", "458", "459"), size === 0)) return top;
      let at = 0;
      for (let below = 1; stryMutAct_9fa48("462") ? below >= size : stryMutAct_9fa48("461") ? below <= size : stryMutAct_9fa48("460") ? false : (stryCov_9fa48("460", "461", "462"), below < size); below = stryMutAct_9fa48("463") ? 2 * at - 1 : (stryCov_9fa48("463"), (stryMutAct_9fa48("464") ? 2 / at : (stryCov_9fa48("464"), 2 * at)) + 1)) {
        if (stryMutAct_9fa48("465")) {
          {}
        } else {
          stryCov_9fa48("465");
          if (stryMutAct_9fa48("468") ? below + 1 < size || this.before(below + 1, below) : stryMutAct_9fa48("467") ? false : stryMutAct_9fa48("466") ? true : (stryCov_9fa48("466", "467", "468"), (stryMutAct_9fa48("471") ? below + 1 >= size : stryMutAct_9fa48("470") ? below + 1 <= size : stryMutAct_9fa48("469") ? true : (stryCov_9fa48("469", "470", "471"), (stryMutAct_9fa48("472") ? below - 1 : (stryCov_9fa48("472"), below + 1)) < size)) && this.before(stryMutAct_9fa48("473") ? below - 1 : (stryCov_9fa48("473"), below + 1), below))) stryMutAct_9fa48("474") ? below -= 1 : (stryCov_9fa48("474"), below += 1);
          if (stryMutAct_9fa48("476") ? false : stryMutAct_9fa48("475") ? true : (stryCov_9fa48("475", "476"), this.comesBefore(first, second, label, below))) break;
          this.move(below, at);
          at = below;
        }
      }
      this.put(at, label, first, second);
      return top;
    }
  }
  private before(a: number, b: number): boolean {
    if (stryMutAct_9fa48("477")) {
      {}
    } else {
      stryCov_9fa48("477");
      return this.comesBefore(this.firsts[a]!, this.seconds[a]!, this.labels[a]!, b);
    }
  }
  private comesBefore(first: number, second: number, label: number, other: number): boolean {
    if (stryMutAct_9fa48("478")) {
      {}
    } else {
      stryCov_9fa48("478");
      const [otherFirst, otherSecond] = stryMutAct_9fa48("479") ? [] : (stryCov_9fa48("479"), [this.firsts[other]!, this.seconds[other]!]);
      if (stryMutAct_9fa48("482") ? first === otherFirst : stryMutAct_9fa48("481") ? false : stryMutAct_9fa48("480") ? true : (stryCov_9fa48("480", "481", "482"), first !== otherFirst)) return stryMutAct_9fa48("486") ? first >= otherFirst : stryMutAct_9fa48("485") ? first <= otherFirst : stryMutAct_9fa48("484") ? false : stryMutAct_9fa48("483") ? true : (stryCov_9fa48("483", "484", "485", "486"), first < otherFirst);
      return (stryMutAct_9fa48("489") ? second === otherSecond : stryMutAct_9fa48("488") ? false : stryMutAct_9fa48("487") ? true : (stryCov_9fa48("487", "488", "489"), second !== otherSecond)) ? stryMutAct_9fa48("493") ? second >= otherSecond : stryMutAct_9fa48("492") ? second <= otherSecond : stryMutAct_9fa48("491") ? false : stryMutAct_9fa48("490") ? true : (stryCov_9fa48("490", "491", "492", "493"), second < otherSecond) : stryMutAct_9fa48("497") ? label >= this.labels[other]! : stryMutAct_9fa48("496") ? label <= this.labels[other]! : stryMutAct_9fa48("495") ? false : stryMutAct_9fa48("494") ? true : (stryCov_9fa48("494", "495", "496", "497"), label < this.labels[other]!);
    }
  }
  private move(from: number, to: number): void {
    if (stryMutAct_9fa48("498")) {
      {}
    } else {
      stryCov_9fa48("498");
      this.put(to, this.labels[from]!, this.firsts[from]!, this.seconds[from]!);
    }
  }
  private put(at: number, label: number, first: number, second: number): void {
    if (stryMutAct_9fa48("499")) {
      {}
    } else {
      stryCov_9fa48("499");
      this.labels[at] = label;
      this.firsts[at] = first;
      this.seconds[at] = second;
    }
  }
}