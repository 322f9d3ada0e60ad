import { utcDay } from "../../../domain/utc-day.js";
import type { PlanAnswer } from "../../../domain/plan/plan-answer.js";
import type { Addresses } from "../../addresses.js";
import { dateText } from "../../words/clock-text.js";
import { link, paragraph, text, type Block, type Line } from "../document.js";
import type { NameBook } from "../../words/name-book.js";

/** Whose plan it is, which revision, and where it can be found again. */
export function attributionSection(
  { publication }: Pick<PlanAnswer, "publication">,
  addresses: Addresses,
  { words, reader }: NameBook,
): readonly Block[] {
  const { publisher, revision, publishedAt, withdrawnAt } = publication;
  const published = dateText(utcDay(publishedAt), reader.locale);
  const lines: readonly Line[] = [
    [text(words.by), link(publisher.name, addresses.publisher)],
    [text(words.revision({ number: revision, date: published }))],
    ...(withdrawnAt === null ? [] : [[text(words.withdrawn)]]),
    [link(words.thisRevision, addresses.revision), text("·"), link(words.newestRevision, addresses.plan)],
    [link(words.listAddress, addresses.list), text("·"), link(words.calendar, addresses.calendar)],
  ];
  return [paragraph(...lines)];
}
