import type { MeasureSystem } from "../../model/amount.js";
import { languageOf } from "../reader-locale.js";
import { numberMarks, type NumberMarks } from "./number-marks.js";

export interface LineOptions {
  /** BCP 47 tag of the writing; null: English words, and only numbers that can mean one thing. */
  readonly locale: string | null;
  readonly measures: MeasureSystem;
}

/** What reading any part of a line needs to know. */
export interface LineContext extends LineOptions {
  readonly language: string;
  readonly marks: NumberMarks | null;
}

export const lineContext = ({ locale, measures }: LineOptions): LineContext => ({
  locale,
  measures,
  language: languageOf(locale),
  marks: numberMarks(locale),
});
