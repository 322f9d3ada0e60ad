import type { Rule } from "eslint";
import type { UnusedExport } from "./unused-exports.mjs";

export function unusedInSrc(): readonly UnusedExport[];
export function ruleOfUnused(find: () => readonly UnusedExport[]): Rule.RuleModule;
