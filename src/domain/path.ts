/** Where in a document: `["components", "dal", "lines", "l2"]`. Slugs and ids, or indexes where nothing has a name. */
export type Path = readonly (string | number)[];
