/** The largest file that is read, in bytes. */
export const largestImageFile = 15 * 1024 * 1024;

/** More than the cameras of telephones take; a decoded picture of so many takes some 200 MB. */
export const mostPixels = 50_000_000;

/** Of the shorter side, in pixels. */
export const leastSide = 64;

/** How much longer one side may be than the other: what is shown beside a text is no ribbon. */
export const mostTimesLonger = 3;

/** The longer side of a picture as it is kept, in pixels. */
export const longestKeptSide = 2_560;

/** Seconds that one picture may take to be read or written. */
export const patienceSeconds = 30;
