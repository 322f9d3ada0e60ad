import { writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import sharp from "sharp";

/**
 * node scripts/draw-demo-pictures.mjs
 *
 * Draws the pictures of the demo's plans into seeds/images: shapes of our own, no photo of anybody's.
 */

const folder = join(dirname(dirname(fileURLToPath(import.meta.url))), "seeds/images");
const [width, height] = [960, 720];

const circle = (x, y, r, fill) => `<circle cx="${x}" cy="${y}" r="${r}" fill="${fill}"/>`;
const ellipse = (x, y, rx, ry, fill, turn = 0) =>
  `<ellipse cx="${x}" cy="${y}" rx="${rx}" ry="${ry}" fill="${fill}" transform="rotate(${turn} ${x} ${y})"/>`;
const path = (d, fill, more = "") => `<path d="${d}" fill="${fill}" ${more}/>`;
const line = (d, stroke, thick) =>
  `<path d="${d}" fill="none" stroke="${stroke}" stroke-width="${thick}" stroke-linecap="round"/>`;

/** A bowl seen from above, and what lies in it. */
const bowl = (inside, rim, ground) => `${circle(480, 370, 300, rim)}${circle(480, 370, 262, ground)}${inside}`;

/** Places in a bowl that look thrown and are always the same. */
function* scattered(count, reach, seed) {
  let state = seed;
  for (let at = 0; at < count; at += 1) {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    const turn = (state / 2_147_483_648) * Math.PI * 2;
    const far = reach * Math.sqrt((at + 0.5) / count);
    yield { x: Math.round(480 + far * Math.cos(turn)), y: Math.round(370 + far * Math.sin(turn)), turn: state % 180 };
  }
}

const strewn = (count, reach, seed, draw) => [...scattered(count, reach, seed)].map(draw).join("");

const carrot = (x, y, turn) =>
  `<g transform="translate(${x} ${y}) rotate(${turn})">${line("M0 -70 Q-30 -120 -44 -150 M0 -70 Q0 -130 4 -165 M0 -70 Q30 -120 48 -146", "#5d8a3a", 14)}${path("M-52 -70 Q0 -100 52 -70 Q44 60 0 190 Q-44 60 -52 -70Z", "#e0832f")}${line("M-30 -20 L-4 -16 M6 40 L28 36 M-18 90 L-2 94", "#c26a1d", 7)}</g>`;
const beet = (x, y) =>
  `<g transform="translate(${x} ${y})">${line("M0 -80 Q-40 -150 -70 -190 M0 -80 Q10 -150 0 -205 M0 -80 Q50 -140 84 -176", "#7b2a4a", 14)}${ellipse(-74, -200, 34, 58, "#4f7d3c", -30)}${ellipse(0, -222, 32, 58, "#5d8a3a")}${ellipse(88, -190, 34, 56, "#4f7d3c", 34)}${circle(0, 0, 96, "#8c2f55")}${path("M-10 92 Q0 150 4 190 Q12 150 14 90Z", "#8c2f55")}${line("M-60 -30 Q-40 -64 -6 -72", "#b0557a", 9)}</g>`;
const parsnip = (x, y, turn) =>
  `<g transform="translate(${x} ${y}) rotate(${turn})">${line("M0 -80 Q-22 -130 -30 -160 M0 -80 Q18 -130 26 -164", "#7ea34e", 12)}${path("M-60 -80 Q0 -112 60 -80 Q40 50 6 200 Q0 214 -6 200 Q-40 50 -60 -80Z", "#efdcae")}${line("M-34 -36 L-8 -30 M2 24 L26 18 M-16 76 L0 82", "#d3b97d", 7)}</g>`;
const kale = (x, y, turn, fill) =>
  `<g transform="translate(${x} ${y}) rotate(${turn})">${["-44 -60", "44 -60", "-56 0", "56 0", "-36 56", "36 56", "0 -96", "0 20"].map((at) => circle(...at.split(" "), 52, fill)).join("")}${line("M0 170 L0 -90 M0 20 L-48 -20 M0 20 L48 -20 M0 -30 L-30 -66 M0 -30 L30 -66", "#cfe0a8", 11)}</g>`;
const bean = ({ x, y, turn }) =>
  `<g transform="translate(${x} ${y}) rotate(${turn})">${path("M-34 -8 Q-30 -32 0 -30 Q32 -32 36 -4 Q36 24 14 26 Q4 14 -8 22 Q-34 26 -34 -8Z", "#8a3a2e")}${line("M-16 -14 Q-2 -22 12 -16", "#b8675a", 6)}</g>`;
const egg = (x, y, turn) =>
  `<g transform="translate(${x} ${y}) rotate(${turn})">${ellipse(0, 0, 92, 118, "#fdf8ec")}${circle(0, 22, 46, "#f2b632")}${ellipse(-14, 8, 12, 9, "#f9d77e")}</g>`;

const pictures = {
  "roots-and-barley": [
    "#e9efe2",
    `${carrot(230, 340, -16)}${beet(450, 400)}${parsnip(668, 330, 14)}${carrot(820, 400, 24)}`,
  ],
  "bean-night": [
    "#f3e7d8",
    bowl(
      strewn(46, 225, 7, bean) + ellipse(420, 300, 30, 12, "#4f7d3c", 24) + ellipse(560, 430, 30, 12, "#5d8a3a", -30),
      "#35546b",
      "#6d3328",
    ),
  ],
  "lentils-and-greens": [
    "#e4ece9",
    bowl(
      strewn(120, 232, 11, ({ x, y }) => ellipse(x, y, 17, 14, (x + y) % 3 === 0 ? "#7a6a3c" : "#94834d")) +
        kale(380, 330, -24, "#3f7042") +
        kale(600, 390, 30, "#4f8350"),
      "#c9b28a",
      "#6b5d34",
    ),
  ],
  "eggs-and-oats": [
    "#eef0f6",
    bowl(
      strewn(90, 235, 23, ({ x, y, turn }) => ellipse(x, y, 20, 11, turn % 2 === 0 ? "#d9bd8b" : "#c9a972", turn)) +
        egg(390, 350, -18) +
        egg(580, 400, 22) +
        line("M300 470 Q420 540 640 520", "#6f9a3e", 20),
      "#8c4f3d",
      "#e6d3ac",
    ),
  ],
};

for (const [name, [ground, shapes]] of Object.entries(pictures)) {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}"><rect width="${width}" height="${height}" fill="${ground}"/>${ellipse(480, 640, 430, 46, "#00000014")}${shapes}</svg>`;
  const bytes = await sharp(Buffer.from(svg)).webp({ quality: 80, effort: 6 }).toBuffer();
  await writeFile(join(folder, `${name}.webp`), bytes);
  console.log(`${name}.webp ${bytes.length}`);
}
