import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { measuresOfRegion } from "../../../domain/quantity/locale-measures.js";
import { languageOf } from "../../../domain/quantity/reader-locale.js";
import { measureSystems, type MeasureSystem } from "../../../domain/model/amount.js";
import { regionCode, regionInstead } from "../../../domain/model/region-codes.js";
import { localeSchema, slugSchema } from "../../../imports/documents/schemas/scalar-schemas.js";
import { measureSystemWords } from "../../../imports/documents/schemas/shared-schemas.js";
import { hasCode } from "../../../persistence/database/has-code.js";
import { withJson, type AddCommand } from "../command.js";
import { cannotWrite, makeFolder } from "../pulled-files.js";
import { starterPlan, starterLanguages } from "../starter-plan.js";
import { CommandFailed, exitCodes, usage, type Outcome } from "../outcome.js";

interface InitOptions {
  readonly json?: boolean;
  readonly locale: string;
  readonly measures?: string;
  readonly region?: string;
  readonly publisher: string;
}

const fileName = "plan.yaml";

export const addInit: AddCommand = (program, run) => {
  withJson(program.command("init"))
    .description(
      "write a folder with a first plan to edit: one component and two meals, with comments in your language",
    )
    .argument("[folder]", "folder to write to", ".")
    .option("--locale <tag>", "your language, such as en, en-US, de, fr, es or pl", "en")
    .option("--measures <system>", `${Object.values(measureSystemWords).join(", ")} (default: those of the locale)`)
    .option("--region <code>", "country of the plan, as an ISO 3166 code (default: that of the locale, or none)")
    .option("--publisher <slug>", "the short name of your publisher", "my-kitchen")
    .action((folder: string, options: InitOptions) => run("init", options, () => init(folder, options)));
};

async function init(folder: string, options: InitOptions): Promise<Outcome> {
  const { locale, publisher } = options;
  const language = starterLanguages.find((each) => each === languageOf(locale));
  if (language === undefined || !localeSchema.safeParse(locale).success)
    throw usage(
      `"${locale}" is no language there is a first plan in: --locale takes ${starterLanguages.join(", ")}, or one with a country, such as en-US.`,
    );
  if (!slugSchema.safeParse(publisher).success)
    throw usage(`"${publisher}" is no short name: lower-case letters and digits, words joined by hyphens.`);
  const own = /-([A-Z]{2})$/.exec(locale)?.[1] ?? null;
  const region = options.region === undefined ? own : regionCode(options.region);
  if (region === null && options.region !== undefined)
    throw usage(`"${options.region}" is no region: --region takes ${regionInstead(options.region)}.`);
  const measures = measuresOf(options.measures, own);
  const path = join(folder, fileName);
  await makeFolder(folder);
  await writeNew(path, starterPlan({ language, locale, measures, region, publisher }));
  return {
    exit: exitCodes.ok,
    result: { files: [{ path }] },
    said: [`${path}: a first plan. Change it, then: prepwright check --explain ${path}`],
  };
}

function measuresOf(written: string | undefined, region: string | null): MeasureSystem {
  if (written === undefined) return measuresOfRegion(region);
  const wanted = written.toLowerCase().replace(/[_-]/g, " ");
  const found = measureSystems.find((system) => measureSystemWords[system] === wanted);
  if (found !== undefined) return found;
  throw usage(`"${written}" are no measures: --measures takes ${Object.values(measureSystemWords).join(", ")}.`);
}

/** Never over a file that is there. */
async function writeNew(path: string, text: string): Promise<void> {
  try {
    await writeFile(path, text, { flag: "wx" });
  } catch (error) {
    if (!hasCode(error, "EEXIST")) throw cannotWrite(path, error);
    throw new CommandFailed(exitCodes.conflict, "FILE_EXISTS", `${path} already exists. Name another folder.`);
  }
}
