import { regionCode, regionInstead } from "../../../domain/model/region-codes.js";
import type { Problem } from "../../../domain/problem.js";
import { readTexts } from "../../../services/drafts/read-texts.js";
import { readClientSettings } from "../../setup/environment.js";
import { checkOffline } from "../check-offline.js";
import { asking, withService, type AddCommand, type ServiceOptions } from "../command.js";
import { countNoun } from "../count-noun.js";
import { explainedJson, explainedText, type ExplainedLine } from "../explained-line.js";
import { CheckDocumentsDocument } from "../generated/operations.js";
import { exitCodes, usage, type Outcome } from "../outcome.js";
import { choosePublisher } from "../choose-publisher.js";
import { readFiles } from "../read-files.js";
import { readImages } from "../read-images.js";
import { shownProblem } from "../shown-problem.js";

interface CheckOptions extends ServiceOptions {
  readonly publisher?: string;
  readonly offline?: boolean;
  readonly region?: string;
  readonly explain?: boolean;
}

export const addCheck: AddCommand = (program, run) => {
  withService(program.command("check"))
    .description("report what is wrong with documents, and what readers would complain about; changes nothing")
    .argument("<files...>", "YAML or JSON documents, in any order")
    .option("--publisher <slug>", "publisher of the documents, if no plan among them names it")
    .option(
      "--region <code>",
      "region whose rules apply, as an ISO 3166 code (default: that of the plan or its publisher)",
    )
    .option("--explain", "print how each line of text was read: amount, food, part, preparation")
    .option("--offline", "check without a service, even if one is configured")
    .action((files: string[], options: CheckOptions) => run("check", options, () => check(files, options)));
};

async function check(names: readonly string[], options: CheckOptions): Promise<Outcome> {
  const region = regionFrom(options);
  const texts = await readFiles(names);
  const read = readTexts(texts, []);
  if (!read.ok) return { exit: exitCodes.problems, problems: read.problems.map(shownProblem), result: null };
  const images = await readImages(read.value);
  if (images.problems.length > 0) {
    return { exit: exitCodes.problems, problems: images.problems.map(shownProblem), result: null };
  }
  const apart = images.missing.map((problem) => notBeside(problem));
  const documents = read.value.count;
  const explained = (lines: readonly ExplainedLine[]): readonly ExplainedLine[] | null =>
    options.explain === true ? lines : null;
  const isSet = (options.server ?? readClientSettings().server) !== null;
  if (options.offline === true || !isSet) {
    const { problems, findings, notAtHand, lines } = await checkOffline(read.value, region);
    const missing = [...notAtHand.foods, ...notAtHand.components];
    const unseen =
      missing.length === 0
        ? []
        : [`Not among these files, so not looked at: ${missing.join(", ")}. With --server they are looked up.`];
    return outcome(documents, {
      problems,
      findings,
      notes: [...unseen, ...apart],
      notAtHand: { ...notAtHand },
      lines: explained(lines),
    });
  }
  return asking(options, async (service) => {
    const publisher = await choosePublisher(read.value, options.publisher, service);
    const { explain = false } = options;
    const { checkDocuments } = await service.ask(CheckDocumentsDocument, { publisher, texts, region, explain });
    const lines = explained(checkDocuments.lines ?? []);
    return outcome(documents, { ...checkDocuments, notes: apart, notAtHand: { foods: [], components: [] }, lines });
  });
}

/** A picture that the service may have all the same. */
const notBeside = (problem: Problem): string =>
  problem.code === "UNKNOWN_IMAGE"
    ? `No file ${problem.image} beside ${problem.place?.file ?? "the document"}: publishing takes what was handed in under that name before.`
    : "";

function regionFrom({ region }: CheckOptions): string | null {
  if (region === undefined) return null;
  const code = regionCode(region);
  if (code === null) throw usage(`"${region}" is no region: --region takes ${regionInstead(region)}.`);
  return code;
}

interface Found extends Required<Pick<Outcome, "problems" | "findings" | "notes">> {
  readonly notAtHand: { readonly foods: readonly string[]; readonly components: readonly string[] };
  /** null: not asked for. */
  readonly lines: readonly ExplainedLine[] | null;
}

function outcome(documents: number, { problems, findings, notes, notAtHand, lines }: Found): Outcome {
  const stops = findings.some(({ severity }) => severity === "STOPS");
  const wrong = problems.length > 0 || stops;
  const whole = notAtHand.foods.length + notAtHand.components.length === 0;
  const verdict = wrong
    ? "Not to be published like this."
    : `${countNoun(documents, "document")}: nothing stands in the way of publishing${whole ? "" : " as far as can be seen here"}.`;
  return {
    exit: wrong ? exitCodes.problems : exitCodes.ok,
    problems,
    findings,
    result: { documents, whole, notAtHand, ...(lines === null ? {} : { lines: explainedJson(lines) }) },
    said: [...explainedText(lines ?? []), verdict],
    notes,
  };
}
