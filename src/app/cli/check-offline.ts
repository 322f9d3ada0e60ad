import { firstProblems } from "../../domain/first-problems.js";
import type { Food } from "../../domain/model/food.js";
import type { CodeLists } from "../../domain/model/code-lists.js";
import { codeListsOf, numbersThatAre } from "../../domain/plan/check/code-lists-of.js";
import type { Problem } from "../../domain/problem.js";
import { compileFoodNames } from "../../domain/quantity/food-name.js";
import { problemText } from "../../exports/sentences/problem-text.js";
import type { LineExplained } from "../../imports/documents/lines/explain-lines.js";
import { textLinesOf } from "../../imports/documents/lines/resolve-text-lines.js";
import { referencedSlugs } from "../../imports/documents/referenced-slugs.js";
import { openTableNumber, openTableSlugsIn } from "../../domain/model/open-table-slug.js";
import { calledByNumber, foodOfRow } from "../../imports/usda/food-of-row.js";
import type { ExplainedLine } from "./explained-line.js";
import { placedProblem } from "../../imports/documents/yaml/placed-problem.js";
import type { DocumentProblem, DocumentsRead } from "../../imports/documents/read-documents.js";
import { catalogueFacts } from "../../imports/usda/catalogue-facts.js";
import { mergeCatalogueFood } from "../../imports/usda/merge-catalogue-food.js";
import { checkTexts } from "../../services/drafts/check/check-texts.js";
import { numbersIn } from "../../services/drafts/load-references.js";
import type { PublisherReader } from "../../services/answers/resolve-region.js";
import { projectRoot } from "../setup/project-root.js";
import { readShipped } from "../setup/shipped-data.js";
import type { ShownFinding, ShownProblem } from "./outcome.js";
import { shownFinding, shownProblem } from "./shown-problem.js";

/** What a check without a service found, and what it could not look at. */
interface OfflineCheck {
  readonly problems: readonly ShownProblem[];
  readonly findings: readonly ShownFinding[];
  /** Slugs that the documents name and that are not among them. */
  readonly notAtHand: { readonly foods: readonly string[]; readonly components: readonly string[] };
  /** How the lines that are written as text were read. */
  readonly lines: readonly ExplainedLine[];
}

/**
 * Checks documents with nothing beside them but the published rules and the open food table that come with the program. What they name and is not
 * among them is no fault: the service may know it.
 */
export async function checkOffline(read: DocumentsRead, region: string | null): Promise<OfflineCheck> {
  const rules = await readShipped("rules", projectRoot());
  const by = {
    ...{ rules, clock: () => new Date(), region },
    readRules: () => Promise.resolve(rules.safety),
    readPublishers: publishersAmong(read),
  };
  const documents = read.documents.map(({ document }) => document);
  const texts = textLinesOf(documents);
  const inLines = [...referencedSlugs(documents).foods, ...openTableSlugsIn(texts.join("\n"))];
  const { inherit, numbers, foodsOf } = await openTableFor(
    read,
    new Set(inLines.flatMap((slug) => openTableNumber(slug) ?? [])),
  );
  const codes = { ...codeListsOf(rules), ...numbers };
  const foods = foodsOf(inLines);
  // By their names a line is read; what the service knows of them is not at hand.
  const base = texts.length > 0 ? await readShipped("base-foods", projectRoot()) : [];
  const named = compileFoodNames([...base, ...foods.map(calledByNumber)]);
  const known = { foods, components: [], named, inherit, codes };
  const { problems, findings, lines } = await checkTexts(read, known, by);
  const elsewhere = problems.flatMap(({ problem }) => nameOf(problem));
  const own = problems.filter(({ problem }: DocumentProblem) => nameOf(problem).length === 0);
  return {
    problems: firstProblems(own.map(placedProblem)).map(shownProblem),
    findings: own.length > 0 ? [] : findings.map(shownFinding),
    notAtHand: {
      foods: distinct(elsewhere.flatMap(({ food }) => food ?? [])),
      components: distinct(elsewhere.flatMap(({ component }) => component ?? [])),
    },
    lines: lines.map(explainedLine),
  };
}

/** What a publisher's document among them says of it; what the service knows of it is not at hand. */
const publishersAmong =
  ({ documents }: DocumentsRead): PublisherReader =>
  (slugs) =>
    Promise.resolve(
      slugs.map((slug) => {
        const found = documents.find(({ document }) => document.kind === "publisher" && document.slug === slug);
        return found?.document.kind === "publisher" ? { id: slug, name: slug, ...found.document } : null;
      }),
    );

interface OpenTable {
  readonly inherit: (food: Food) => Food;
  readonly numbers: CodeLists;
  /** Rows that lines name by number. */
  readonly foodsOf: (slugs: readonly string[]) => readonly Food[];
}

/** What the foods among the documents inherit, and which numbers there are. The table is large, and read only where one names a number in it. */
async function openTableFor(read: DocumentsRead, inLines: ReadonlySet<string>): Promise<OpenTable> {
  const wanted = new Set([...numbersIn(read), ...inLines]);
  if (wanted.size === 0) return { inherit: (food) => food, numbers: {}, foodsOf: () => [] };
  const root = projectRoot();
  const { edition } = await readShipped("catalogue-edition", root);
  const rows = (await readShipped("catalogue", root)).filter(({ ndbNo }) => wanted.has(ndbNo));
  const facts = new Map(rows.map((row) => [row.ndbNo, catalogueFacts(row, edition)]));
  const inherit = (food: Food): Food => {
    const inherited = food.ndbNo === null ? undefined : facts.get(food.ndbNo);
    return inherited === undefined ? food : mergeCatalogueFood(food, inherited);
  };
  return {
    inherit,
    numbers: { "usda-number": numbersThatAre((ndbNo) => facts.has(ndbNo)) },
    foodsOf: (slugs) =>
      rows
        .map(foodOfRow)
        .filter(({ slug }) => slugs.includes(slug))
        .map(inherit),
  };
}

/** A line, as a service would say it. */
function explainedLine({ written, place, takes, open }: LineExplained): ExplainedLine {
  const { file = null, line = null, column = null } = place ?? {};
  const problem = open && { message: problemText({ code: "LINE_OPEN", path: [], written, ...open }) };
  return { written, file, line, column, takes, problem, mayName: open?.named ?? [], mayTake: open?.amounts ?? [] };
}

function nameOf(problem: Problem): readonly { readonly food?: string; readonly component?: string }[] {
  if (problem.code === "UNKNOWN_FOOD") return [{ food: problem.food }];
  // The service may know what these words name.
  if (problem.code === "LINE_OPEN" && problem.reasons.length === 0 && problem.named?.length === 0)
    return [{ food: problem.written }];
  return problem.code === "UNKNOWN_COMPONENT" ? [{ component: problem.component }] : [];
}

const distinct = (names: readonly string[]): readonly string[] => [...new Set(names)].toSorted();
