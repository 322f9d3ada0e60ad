import { problemText } from "../../exports/sentences/problem-text.js";
import type { Deps } from "../deps.js";
import { feedProblems } from "../imports/feeds/save-feed.js";
import { feedsFileSchema, fileNames } from "./archive-format.js";
import { BadArchive, parseFile, shaped, type OpenArchive } from "./open-archive.js";

/**
 * Feeds, disabled: a file that two installations fetch would be imported twice. An archive of version 1 has none, nor has one of a token that may not
 * read them. @throws BadArchive
 */
export async function takeFeeds({ data }: Deps, archive: OpenArchive, publisher: string): Promise<number> {
  const file = fileNames.feeds;
  if (!archive.names.has(file)) return 0;
  const feeds = shaped(file, feedsFileSchema, parseFile(file, await archive.read(file)));
  if (new Set(feeds.map(({ slug }) => slug)).size < feeds.length)
    throw new BadArchive({ kind: "CONTENT", detail: "a feed is in it twice" }, file);
  for (const { slug, kind, settings, cron, zone } of feeds) {
    const checked = feedProblems({ publisher, slug, kind, settings, cron, zone });
    if (!checked.ok) {
      const wrong = checked.problems.map((each) => `${each.path.slice(1).join(".")}: ${problemText(each)}`);
      throw new BadArchive(
        { kind: "CONTENT", detail: `the feed "${slug}" has a wrong setting, ${wrong[0] ?? ""}` },
        file,
      );
    }
    await data.feeds.save({ publisher, slug, kind, settings: checked.value, cron, zone, enabled: false });
  }
  return feeds.length;
}
