import type { PlanTime } from "../../../domain/model/plan.js";
import type { Problem } from "../../../domain/problem.js";
import type { DocumentsRead } from "../../../imports/documents/read-documents.js";
import { readTexts } from "../../../services/drafts/read-texts.js";
import { remote, withService, type AddCommand, type ServiceOptions } from "../command.js";
import { compareDrafts } from "../compare-drafts.js";
import { countNoun } from "../count-noun.js";
import {
  CheckDocumentsDocument,
  SaveDocumentsDocument,
  SchedulePublicationDocument,
  ViewerDocument,
  type ScheduledPartsFragment,
  type SchedulePublicationInput,
} from "../generated/operations.js";
import { exitCodes, usage, type Outcome, type ShownProblem } from "../outcome.js";
import { publishPlan, type PublishedPlan } from "../publish-plan.js";
import { choosePublisher } from "../choose-publisher.js";
import { readFiles, type TextFile } from "../read-files.js";
import type { RemoteService } from "../remote-service.js";
import { readImages } from "../read-images.js";
import { knownFiles, uploadImages } from "../upload-images.js";
import { readVersions } from "../read-versions.js";
import { readScheduled } from "../read-scheduled.js";
import { scheduledLine, shownScheduled, timeOptions } from "../scheduled-line.js";
import { shownProblem } from "../shown-problem.js";

interface PublishOptions extends ServiceOptions {
  readonly note?: string;
  readonly overwrite?: boolean;
  readonly publisher?: string;
  readonly at?: string;
  readonly zone?: string;
}

export const addPublish: AddCommand = (program, run) => {
  withService(program.command("publish"))
    .description("save documents as drafts, all of them or none, then publish the plans among them")
    .argument("<files...>", "YAML or JSON documents, in any order")
    .option("--note <text>", "note for readers of the earlier revisions: what was wrong, and what is right")
    .option("--overwrite", "replace drafts even if somebody else saved them last")
    .option("--publisher <slug>", "publisher of the documents, if no plan among them names it")
    .option("--at <time>", "time at which to publish the plans, such as 2026-12-24T06:00; requires --zone")
    .option("--zone <name>", "IANA time zone of --at, such as Europe/Berlin")
    .action((files: string[], options: PublishOptions) => run("publish", options, () => publish(files, options)));
};

async function publish(names: readonly string[], options: PublishOptions): Promise<Outcome> {
  if (options.note?.trim() === "") throw usage("--note must say something, or be left out.");
  const time = timeOptions(options);
  const texts = await readFiles(names);
  const read = readTexts(texts, []);
  if (!read.ok) return refused(read.problems.map(shownProblem));
  const images = await readImages(read.value);
  if (images.problems.length > 0) return refused(images.problems.map(shownProblem));
  const service = remote(options);
  return publishTexts(service, { texts, read: read.value, images, time }, options).finally(() => service.close());
}

const refused = (problems: readonly ShownProblem[]): Outcome => ({
  exit: problems.some(({ code }) => code === "STALE_DRAFT") ? exitCodes.conflict : exitCodes.problems,
  problems,
  result: null,
});

interface ToPublish {
  readonly texts: readonly TextFile[];
  readonly read: DocumentsRead;
  readonly images: Awaited<ReturnType<typeof readImages>>;
  /** null: at once. */
  readonly time: PlanTime | null;
}

/** Nothing is saved of what could not be published: the check comes first. */
async function publishTexts(
  service: RemoteService,
  { texts, read, images, time }: ToPublish,
  { note, overwrite = false, publisher: told }: PublishOptions,
): Promise<Outcome> {
  const publisher = await choosePublisher(read, told, service);
  const { checkDocuments } = await service.ask(CheckDocumentsDocument, { publisher, texts });
  const { problems, findings } = checkDocuments;
  const stops = findings.filter(({ severity }) => severity === "STOPS");
  if (problems.length + stops.length > 0) return { ...refused(problems), findings };
  const unknown = await unknownImages(service, publisher, images.missing);
  if (unknown.length > 0) return refused(unknown.map(shownProblem));
  const { viewer } = await service.ask(ViewerDocument, {});
  const drafts = await readVersions(service, publisher);
  const { expected, changed, conflicts } = compareDrafts(read.documents, drafts, viewer);
  if (conflicts.length > 0 && !overwrite) return { exit: exitCodes.conflict, problems: conflicts, result: null };
  const uploaded = images.images.length === 0 ? 0 : await uploadImages(service, publisher, images.images);
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
  const scheduled: ScheduledPartsFragment[] = [];
  const ending = new Set<string>();
  const done = async () => {
    // The service schedules them with their plans.
    const withdrawals = ending.size === 0 ? [] : await readScheduled(service, publisher, ["WAITING"]);
    const ends = withdrawals.filter(({ kind, slug }) => kind === "WITHDRAW" && ending.has(slug));
    return summary({
      ...{ publisher, saved: changed.length, uploaded, plans: published },
      scheduled: [...scheduled, ...ends],
    });
  };
  for (const slug of plans) {
    const expectedVersion = versions.get(`PLAN ${slug}`);
    if (expectedVersion === undefined) throw new Error(`the service saved no draft of ${slug}`);
    const one = time === null ? await publishPlan(service, { publisher, slug, expectedVersion }, note ?? null) : null;
    const document = read.documents
      .map((each) => each.document)
      .find((each) => each.kind === "plan" && each.slug === slug);
    const dates = document?.kind === "plan" ? document : undefined;
    const isLater = one?.ok === false && one.problems.some(({ code }) => code === "PUBLISH_AT_LATER");
    // The command line goes before the document.
    const then = time ?? (isLater ? dates?.["publish-at"] : undefined);
    if (then !== undefined) {
      const made = await schedulePlan(service, { publisher, slug, expectedVersion, ...then, changeNote: note ?? null });
      if (made.scheduled === null) return { ...refused(made.problems), findings, ...(await done()) };
      scheduled.push(made.scheduled);
    } else if (one?.ok === true) published.push(one.plan);
    else return { ...refused(one?.problems ?? []), findings, ...(await done()) };
    if (dates?.["withdraw-at"] !== undefined) ending.add(slug);
  }
  return { exit: exitCodes.ok, findings, ...(await done()) };
}

/** Of pictures that are not beside the documents, those that were not handed in before either. */
async function unknownImages(
  service: RemoteService,
  publisher: string,
  missing: readonly Problem[],
): Promise<readonly Problem[]> {
  const fileOf = (problem: Problem): string => (problem.code === "UNKNOWN_IMAGE" ? problem.image : "");
  if (missing.length === 0) return [];
  const known = await knownFiles(service, publisher, missing.map(fileOf));
  return missing.filter((problem) => !known.has(fileOf(problem)));
}

const schedulePlan = async (service: RemoteService, input: SchedulePublicationInput) =>
  (await service.ask(SchedulePublicationDocument, { input })).schedulePublication;

interface Done {
  readonly publisher: string;
  readonly saved: number;
  readonly uploaded: number;
  readonly plans: readonly PublishedPlan[];
  readonly scheduled: readonly ScheduledPartsFragment[];
}

function summary({ publisher, saved, uploaded, plans, scheduled }: Done): Pick<Outcome, "result" | "said" | "notes"> {
  const drafts = saved === 0 ? "No draft changed." : `Saved ${countNoun(saved, "changed document")}.`;
  return {
    result: {
      publisher,
      saved,
      ...(uploaded > 0 && { images: uploaded }),
      plans: plans.map((plan) => ({ ...plan })),
      ...(scheduled.length > 0 && { scheduled: scheduled.map(shownScheduled) }),
    },
    said: [
      ...(uploaded === 0 ? [] : [`Handed in ${countNoun(uploaded, "picture")}.`]),
      drafts,
      ...plans.map((plan) => sentence(publisher, plan)),
      ...scheduled.map(scheduledLine),
    ],
    notes:
      plans.length + scheduled.length === 0 ? ["There is no plan among these files, so nothing was published."] : [],
  };
}

const sentence = (publisher: string, { slug, revision, created }: PublishedPlan): string =>
  created
    ? `Published ${publisher}/${slug}, revision ${revision}.`
    : `${publisher}/${slug} is published like this already, as revision ${revision}.`;
