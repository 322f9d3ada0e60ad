/** What computing an answer is spent on: reading what is needed, the plan for N servings, its list, the order of its session. */
export type Stage = "gather" | "scale" | "shop" | "schedule" | "compile" | "execute";

/** Does the work, noting how long it took, and hands on what it gives or throws. */
export type AroundStage = <T>(stage: Stage, work: () => T) => T;

interface Watched {
  readonly aroundStage?: AroundStage;
}

/** Does the work. Where nobody watches, nothing else. */
export const inStage = <T>({ aroundStage }: Watched, stage: Stage, work: () => T): T =>
  aroundStage === undefined ? work() : aroundStage(stage, work);
