import type { Page } from "playwright-core";

/**
 * Texts that stand out less than 6 to 1 against what is behind them, by the formula of WCAG 2.2 (relative luminance and contrast ratio,
 * https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio). What is switched off is left out, as there.
 */
export const paleTexts = (page: Page): Promise<readonly string[]> => page.evaluate<string[]>(pale);

/** Things to press that are lower or narrower than 44 CSS pixels, the size of WCAG 2.2, 2.5.5; links within a sentence are left out, as there. */
export const smallTargets = (page: Page): Promise<readonly string[]> => page.evaluate<string[]>(small);

const pale = `(() => {
  const channels = (colour) => (colour.match(/[\\d.]+/g) ?? []).map(Number);
  const light = (colour) => {
    const [red, green, blue] = channels(colour).map((value) => {
      const part = value / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const behind = (element) => {
    for (let at = element; at !== null; at = at.parentElement) {
      const colour = getComputedStyle(at).backgroundColor;
      if ((channels(colour)[3] ?? 1) > 0) return colour;
    }
    return "rgb(255, 255, 255)";
  };
  const found = new Set();
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (texts.nextNode() !== null) {
    const { parentElement: element, textContent } = texts.currentNode;
    if (!textContent.trim() || element.closest("script, option, [disabled]") !== null) continue;
    if (element.getClientRects().length === 0) continue;
    const [front, back] = [light(getComputedStyle(element).color), light(behind(element))];
    const ratio = (Math.max(front, back) + 0.05) / (Math.min(front, back) + 0.05);
    if (ratio < 6) found.add(ratio.toFixed(2) + ": " + textContent.trim().slice(0, 40));
  }
  return [...found];
})()`;

const small = `(() => {
  const found = new Set();
  for (const each of document.querySelectorAll("a[href], button, summary, input, select")) {
    const target = each.matches("[type=checkbox], [type=radio]") ? (each.closest("label") ?? each) : each;
    const { width, height } = target.getBoundingClientRect();
    if (height === 0 || each.matches(".skip, [type=hidden]")) continue;
    // In the middle of a sentence: words stand beside it in the same block.
    const block = each.closest("p, li, dd, td, figcaption");
    const isInSentence =
      each.tagName === "A" &&
      getComputedStyle(each).display === "inline" &&
      (block?.textContent.trim().length ?? 0) > each.textContent.trim().length;
    if (!isInSentence && (height < 43.9 || width < 43.9)) {
      found.add(width.toFixed(0) + " x " + height.toFixed(0) + ": " + each.tagName + " " + each.textContent.trim().slice(0, 30));
    }
  }
  return [...found];
})()`;
