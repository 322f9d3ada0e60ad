import sharp, { type Sharp } from "sharp";
import { mostPixels, patienceSeconds } from "./image-limits.js";

// Only what is read is decoded at all: whatever a file pretends to be, no other decoder sees it. For the whole process.
sharp.block({ operation: ["VipsForeignLoad"] });
sharp.unblock({
  operation: ["VipsForeignLoadJpeg", "VipsForeignLoadPng", "VipsForeignLoadWebp", "VipsForeignLoadHeif"],
});
// Nothing of one picture is kept for the next, and one picture keeps one core busy.
sharp.cache(false);
sharp.concurrency(1);

/** A picture to be decoded, with the limits of every picture. */
export const decoded = (bytes: Uint8Array): Sharp =>
  sharp(bytes, { failOn: "error", limitInputPixels: mostPixels, limitInputChannels: 5, sequentialRead: true }).timeout({
    seconds: patienceSeconds,
  });
