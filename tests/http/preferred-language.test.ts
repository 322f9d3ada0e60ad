import { describe, expect, it } from "vitest";
import { preferredLanguage } from "../../src/http/preferred-language.js";

const languages = ["en", "de", "fr", "es", "pl"] as const;

// RFC 9110, 12.5.4, with its example "da, en-gb;q=0.8, en;q=0.7".
describe("the language that a browser asks for", () => {
  it.each([
    ["da, en-gb;q=0.8, en;q=0.7", "en"],
    ["de-AT,de;q=0.9,en;q=0.8", "de"],
    ["en;q=0.5, pl", "pl"],
    ["fr;q=0, es;q=0.1", "es"],
    ["FR-ca", "fr"],
    ["pl ; q=0.3 , es ;q=0.2", "pl"],
    ["de;q=0.5,fr;q=0.5", "de"],
  ])("of %s is %s", (header, language) => {
    expect(preferredLanguage(header, languages)).toBe(language);
  });

  it.each([undefined, "", "*", "it, nl;q=0.4", "de;q=2", "de;q=x", ";;;,,,", "-de", "\u0000", "de;q=0.0", "de\u00a0"])(
    "of %s is none",
    (header) => {
      expect(preferredLanguage(header, languages)).toBeNull();
    },
  );

  it("is looked for in few ranges, however many a caller sends", () => {
    expect(preferredLanguage(`${"it,".repeat(5_000)}de`, languages)).toBeNull();
  });
});
