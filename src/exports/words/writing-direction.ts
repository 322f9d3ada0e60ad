/** Scripts that run from right to left, by the language that is written in them (Unicode CLDR, layout.orientation). */
const rightToLeft = new Set(["ar", "arc", "ckb", "dv", "fa", "he", "ks", "ps", "sd", "syr", "ug", "ur", "yi"]);

/** Which way the writing of a BCP 47 tag runs, as HTML names it. */
export function writingDirection(locale: string): "ltr" | "rtl" {
  const [language = "", script = ""] = locale.split("-");
  if (/^(arab|hebr|thaa|syrc|nkoo|adlm)$/i.test(script)) return "rtl";
  return rightToLeft.has(language.toLowerCase()) && !/^(latn|cyrl)$/i.test(script) ? "rtl" : "ltr";
}
