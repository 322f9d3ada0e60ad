/**
 * Words of a step that allow no wait before it, in the languages of the fixed words. They only ever shorten a wait, so a
 * word that means something else now and then costs a minute, never safety.
 */
const atOnce =
  /(?<!\p{L})(straight away|straight into|straight in|straight onto|at once|immediately|right away|sofort|gleich danach|unverzüglich|aussitôt|immédiatement|tout de suite|en seguida|enseguida|inmediatamente|subito|immediatamente|imediatamente|direct|onmiddellijk|meteen|natychmiast|od razu)(?!\p{L})/iu;
const whileWarm =
  /(?<!\p{L})(while (it is |they are |still )?(hot|warm)|still (hot|warm)|noch (heiß|heiss|warm)|solange (sie|er|es) (noch )?(heiß|warm)|encore (chaude?s?|tièdes?)|(aún|todavía) calientes?|ancora cald[aeio]|ainda quentes?|nog (heet|warm)|póki (ciepłe|gorące)|jeszcze (ciepłe|gorące))/iu;

/** Minutes that may pass before a step, by its own words; null: they say nothing. Common practice, no source. */
export function waitInWords(text: string): number | null {
  if (atOnce.test(text)) return 5;
  return whileWarm.test(text) ? 15 : null;
}
