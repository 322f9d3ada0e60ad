import { asking, serverAddress, withService, type AddCommand, type ServiceOptions } from "../command.js";
import {
  CreatePreviewLinkDocument,
  PreviewLinksDocument,
  RevokePreviewLinkDocument,
  ViewerDocument,
  type PreviewLinkPartsFragment,
  type PreviewLinksQuery,
} from "../generated/operations.js";
import { exitCodes, usage, type JsonValue, type Outcome } from "../outcome.js";
import { planName } from "../plan-name.js";
import type { Service } from "../service.js";

interface PreviewOptions extends ServiceOptions {
  readonly days?: string;
  readonly list?: boolean;
  readonly revoke?: string;
  readonly publisher?: string;
}

export const addPreview: AddCommand = (program, run) => {
  withService(program.command("preview"))
    .description("make an address that shows the draft of a plan, as readers would see it, to those you send it to")
    .argument("[plan]", "SLUG or PUBLISHER/SLUG")
    .option("--days <number>", "how long the address works; left out: 7")
    .option("--list", "show which addresses were made, instead")
    .option("--revoke <id>", "take one back, instead")
    .option("--publisher <slug>", "whose they are; left out: whose the token is")
    .action((plan: string | undefined, options: PreviewOptions) =>
      run("preview", options, () => asking(options, (service) => preview(service, plan, options))),
    );
};

function preview(service: Service, plan: string | undefined, options: PreviewOptions): Promise<Outcome> {
  const { list = false, revoke, days } = options;
  const asked = [plan !== undefined, list, revoke !== undefined].filter(Boolean).length;
  if (asked !== 1) throw usage("Name one plan, or use --list, or --revoke with the id of an address.");
  if (revoke !== undefined) return takeBack(service, revoke);
  if (plan === undefined) return show(service, options);
  if (days !== undefined && !/^[1-9]\d{0,2}$/.test(days)) throw usage("--days must be a number of days, such as 7.");
  return make(service, plan, options);
}

/** Whose the token is, where nothing says it. @throws CommandFailed */
async function publisherOf(service: Service, told: string | undefined): Promise<string> {
  if (told !== undefined) return told;
  const { viewer } = await service.ask(ViewerDocument, {});
  if (viewer?.publisher) return viewer.publisher.slug;
  throw usage("The token is no publisher's own. Name the publisher: PUBLISHER/SLUG, or --publisher.");
}

async function make(service: Service, plan: string, options: PreviewOptions): Promise<Outcome> {
  const { publisher: told, days } = options;
  const name = plan.includes("/") ? planName(plan) : planName(`${await publisherOf(service, told)}/${plan}`);
  const input = { ...name, days: days === undefined ? null : Number(days) };
  const { link, path, problems } = (await service.ask(CreatePreviewLinkDocument, { input })).createPreviewLink;
  if (link === null || path === null) return { exit: exitCodes.problems, problems, result: null };
  const address = serverAddress(options) + path;
  return {
    exit: exitCodes.ok,
    result: { link: shown(link), address },
    said: [address],
    notes: [
      `Whoever has this address sees the draft of ${name.publisher}/${name.slug}, until ${link.expiresAt}. It is not shown again.`,
      `To take it back: prepwright preview --revoke ${link.id}`,
    ],
  };
}

async function show(service: Service, { publisher: told }: PreviewOptions): Promise<Outcome> {
  const publisher = await publisherOf(service, told);
  const links: PreviewLinkPartsFragment[] = [];
  let after: string | null = null;
  do {
    const answer: PreviewLinksQuery = await service.ask(PreviewLinksDocument, { publisher, after });
    links.push(...answer.previewLinks.edges.map(({ node }) => node));
    after = answer.previewLinks.pageInfo.hasNextPage ? answer.previewLinks.pageInfo.endCursor : null;
  } while (after !== null);
  const lines = links.map(({ id, slug, expiresAt, revokedAt }) =>
    [id, slug, revokedAt === null ? `until ${expiresAt}` : `taken back ${revokedAt}`].join("  "),
  );
  return { exit: exitCodes.ok, result: { publisher, links: links.map(shown) }, said: lines };
}

async function takeBack(service: Service, id: string): Promise<Outcome> {
  const { link, problems } = (await service.ask(RevokePreviewLinkDocument, { input: { id } })).revokePreviewLink;
  if (link === null) return { exit: exitCodes.problems, problems, result: null };
  return {
    exit: exitCodes.ok,
    result: { link: shown(link) },
    said: [`Took back the preview of ${link.slug}, ${link.id}.`],
  };
}

const shown = (link: PreviewLinkPartsFragment): JsonValue => ({ ...link });
