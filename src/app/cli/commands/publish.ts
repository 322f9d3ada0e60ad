import type { DocumentsRead } from "../../../imports/documents/read-documents.js";
import { readTexts } from "../../../services/drafts/read-texts.js";
import { asking, withService, type AddCommand, type ServiceOptions } from "../command.js";
import { compareDrafts } from "../compare-drafts.js";
import { countNoun } from "../count-noun.js";
import { CheckDocumentsDocument, SaveDocumentsDocument, ViewerDocument } from "../generated/operations.js";
import { exitCodes, usage, type Outcome, type ShownProblem } from "../outcome.js";
import { publishPlan, type PublishedPlan } from "../publish-plan.js";
import { choosePublisher } from "../choose-publisher.js";
import { readFiles, type TextFile } from "../read-files.js";
import { readVersions } from "../read-versions.js";
import type { Service } from "../service.js";
import { shownProblem } from "../shown-problem.js";

interface PublishOptions extends ServiceOptions {
  readonly note?: string;
  readonly overwrite?: boolean;
  readonly publisher?: string;
}

export const addPublish: AddCommand = (program, run) => {
  withService(program.command("publish"))
    .description("save documents as drafts, all of them or none, then publish the plans among them")
    .argument("<files...>", "YAML or JSON documents, in any order")
    .option("--note <text>", "note for readers of the earlier revisions: what was wrong, and what is right")
    .option("--overwrite", "replace drafts even if somebody else saved them last")
    .option("--publisher <slug>", "publisher of the documents, if no plan among them names it")
    .action((files: string[], options: PublishOptions) => run("publish", options, () => publish(files, options)));
};

async function publish(names: readonly string[], options: PublishOptions): Promise<Outcome> {
  if (options.note?.trim() === "") throw usage("--note must say something, or be left out.");
  const texts = await readFiles(names);
  const read = readTexts(texts, []);
  if (!read.ok) return refused(read.problems.map(shownProblem));
  return asking(options, (service) => publishTexts(service, texts, read.value, options));
}

const refused = (problems: readonly ShownProblem[]): Outcome => ({
  exit: problems.some(({ code }) => code === "STALE_DRAFT") ? exitCodes.conflict : exitCodes.problems,
  problems,
  result: null,
});

/** Nothing is saved of what could not be published: the check comes first. */
async function publishTexts(
  service: Service,
  texts: readonly TextFile[],
  read: DocumentsRead,
  { note, overwrite = false, publisher: told }: PublishOptions,
): Promise<Outcome> {
  const publisher = await choosePublisher(read, told, service);
  const { checkDocuments } = await service.ask(CheckDocumentsDocument, { publisher, texts });
  const { problems, findings } = checkDocuments;
  const stops = findings.filter(({ severity }) => severity === "STOPS");
  if (problems.length + stops.length > 0) return { ...refused(problems), findings };
  const { viewer } = await service.ask(ViewerDocument, {});
  const drafts = await readVersions(service, publisher);
  const { expected, changed, conflicts } = compareDrafts(read.documents, drafts, viewer);
  if (conflicts.length > 0 && !overwrite) return { exit: exitCodes.conflict, problems: conflicts, result: null };
  const versions = new Map(drafts.map(({ kind, slug, version }) => [`${kind} ${slug}`, version]));
  if (changed.length > 0) {
    // Only these: what did not change keeps its version, and whoever works on it keeps the one they read.
    const written = changed.map(({ file, text }) => ({ name: file, text }));
    const input = { publisher, texts: written, expected };
    const { saveDocuments } = await service.ask(SaveDocumentsDocument, { input });
    if (saveDocuments.problems.length > 0) return refused(saveDocuments.problems);
    for (const { kind, slug, version } of saveDocuments.drafts ?? []) versions.set(`${kind} ${slug}`, version);
  }
  const plans = read.documents.flatMap(({ document }) => (document.kind === "plan" ? document.slug : []));
  const published: PublishedPlan[] = [];
  for (const slug of plans) {
    const expectedVersion = versions.get(`PLAN ${slug}`);
    if (expectedVersion === undefined) throw new Error(`the service saved no draft of ${slug}`);
    const one = await publishPlan(service, { publisher, slug, expectedVersion }, note ?? null);
    if (!one.ok) return { ...refused(one.problems), findings, ...summary(publisher, changed.length, published) };
    published.push(one.plan);
  }
  return { exit: exitCodes.ok, findings, ...summary(publisher, changed.length, published) };
}

function summary(
  publisher: string,
  saved: number,
  plans: readonly PublishedPlan[],
): Pick<Outcome, "result" | "said" | "notes"> {
  const drafts = saved === 0 ? "No draft changed." : `Saved ${countNoun(saved, "changed document")}.`;
  return {
    result: { publisher, saved, plans: plans.map((plan) => ({ ...plan })) },
    said: [drafts, ...plans.map((plan) => sentence(publisher, plan))],
    notes: plans.length === 0 ? ["There is no plan among these files, so nothing was published."] : [],
  };
}

const sentence = (publisher: string, { slug, revision, created }: PublishedPlan): string =>
  created
    ? `Published ${publisher}/${slug}, revision ${revision}.`
    : `${publisher}/${slug} is published like this already, as revision ${revision}.`;
