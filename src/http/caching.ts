/**
 * Rules, prices and names are those of today: a minute old is as good as new, and for another minute it may be shown while it is asked for
 * again. So a withdrawal is seen after two minutes at most, however many caches are between.
 */
export const liveCaching = "public, max-age=60, stale-while-revalidate=60";

/** Who follows changes asks each time, and is sent nothing where there are none. */
export const changesCaching = "no-cache";
