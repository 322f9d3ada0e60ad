import { anyone } from "../access/actor.js";
import type { Data, Deps } from "../deps.js";
import { depsForActor } from "../deps-for-actor.js";
import type { Dependency, Generations, Slot } from "./generations.js";

/** What an answer depended on while it was computed. */
interface UsedDependencies {
  readonly places: ReadonlySet<Slot>;
  /** It read the clock: what it says is of that day. */
  readonly usedClock: boolean;
  /** It read or did something that is not public, or not listed here: do not cache it. */
  readonly isPrivate: boolean;
}

/**
 * `Deps` for one public request that record every read. A read that is not listed here makes the answer private, so a read that
 * somebody adds later is uncached rather than stale.
 */
export function trackDeps(
  all: Deps,
  generations: Generations,
): { readonly deps: Deps; readonly noted: UsedDependencies } {
  // It is bound to one request already, and untracked reads would go through it.
  const { publicData: _, ...deps } = depsForActor(all, anyone);
  const places = new Set<Slot>();
  const noted = { places, usedClock: false, isPrivate: false };
  const note = (dependence: Dependency): void => void places.add(generations.slot(dependence));
  const notePrivate = (): void => void (noted.isPrivate = true);
  return {
    noted,
    deps: {
      ...deps,
      data: watchData(deps.data, note, notePrivate),
      ...(deps.ownData === undefined ? {} : { ownData: privateReads(deps.ownData, notePrivate) }),
      clock: () => {
        noted.usedClock = true;
        return deps.clock();
      },
    },
  };
}

type Note = (dependence: Dependency) => void;

/** Sections whose reads have one dependency each. Frozen documents have none. */
function watchData(data: Data, note: Note, notePrivate: () => void): Data {
  const { publishers, foods, revisions, planFacts, ruleSets, catalogue, changes, images } = data;
  const on =
    <Given extends readonly unknown[], Found>(dependence: Dependency, read: (...given: Given) => Found) =>
    (...given: Given): Found => {
      note(dependence);
      return read(...given);
    };
  const onEach = (dependences: readonly Dependency[]): void => dependences.forEach(note);
  const watched: Pick<
    Data,
    "publishers" | "foods" | "revisions" | "planFacts" | "ruleSets" | "catalogue" | "changes" | "images"
  > = {
    publishers: {
      ...privately(publishers, notePrivate),
      bySlugs: on("publishers", publishers.bySlugs),
      byIds: on("publishers", publishers.byIds),
      page: (request) => {
        // A publisher is listed while a plan of its is in force.
        onEach(["publishers", "plans"]);
        return publishers.page(request);
      },
    },
    foods: {
      ...privately(foods, notePrivate),
      bySlugs: on("foods", foods.bySlugs),
      byIds: on("foods", foods.byIds),
      idsBySlugs: on("foods", foods.idsBySlugs),
      page: on("foods", foods.page),
      names: on("foods", foods.names),
      currencies: on("foods", foods.currencies),
      measures: on("foods", foods.measures),
      synonyms: on("foods", foods.synonyms),
    },
    revisions: {
      ...privately(revisions, notePrivate),
      summaries: (refs) => {
        onEach(refs.map(({ publisher, slug }): Dependency => `plan ${publisher}/${slug}`));
        return revisions.summaries(refs);
      },
      ofPlan: (name, request) => {
        note(`plan ${name.publisher}/${name.slug}`);
        return revisions.ofPlan(name, request);
      },
      withdrawn: (names) => {
        onEach(names.map(({ publisher, slug }): Dependency => `plan ${publisher}/${slug}`));
        return revisions.withdrawn(names);
      },
      withdrawnOf: on("plans", revisions.withdrawnOf),
      summariesByIds: on("plans", revisions.summariesByIds),
      // Those of a revision that was found never change.
      titles: revisions.titles,
      holdingComponents: on("plans", revisions.holdingComponents),
      page: on("plans", revisions.page),
      bundles: async (ids) => {
        const found = await revisions.bundles(ids);
        // An id that nobody has may be given out yet.
        if (found.includes(null)) note("plans");
        return found;
      },
    },
    planFacts: {
      ...privately(planFacts, notePrivate),
      page: on("listings", planFacts.page),
      count: on("listings", planFacts.count),
      labels: on("listings", planFacts.labels),
      withoutPlans: on("listings", planFacts.withoutPlans),
      nearWords: on("listings", planFacts.nearWords),
    },
    ruleSets: {
      ...privately(ruleSets, notePrivate),
      inForce: on("rules", ruleSets.inForce),
      all: on("rules", ruleSets.all),
      byIds: on("rules", ruleSets.byIds),
      contents: on("rules", ruleSets.contents),
    },
    catalogue: {
      ...privately(catalogue, notePrivate),
      byNumbers: on("foods", catalogue.byNumbers),
      page: on("foods", catalogue.page),
    },
    images: { ...privately(images, notePrivate), removed: on("publishers", images.removed) },
    changes: { page: on("plans", changes.page) },
  };
  return new Proxy(data, {
    get: (target, name, receiver) => {
      if (Object.hasOwn(watched, name)) return Reflect.get(watched, name) as unknown;
      notePrivate();
      return Reflect.get(target, name, receiver) as unknown;
    },
  });
}

/** What is read past the cache is nobody else's. */
const privateReads = (data: Data, notePrivate: () => void): Data =>
  new Proxy(data, {
    get: (target, name, receiver) => {
      notePrivate();
      return Reflect.get(target, name, receiver) as unknown;
    },
  });

/** Every function of a section, noting that it was called. */
function privately<Section extends object>(section: Section, notePrivate: () => void): Section {
  return new Proxy(section, {
    get: (target, name, receiver) => {
      const found = Reflect.get(target, name, receiver) as unknown;
      if (typeof found !== "function") return found;
      return (...given: unknown[]): unknown => {
        notePrivate();
        return Reflect.apply(found, target, given) as unknown;
      };
    },
  });
}
