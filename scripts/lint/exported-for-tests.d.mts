export const exportedForTests: ReadonlySet<string>;
