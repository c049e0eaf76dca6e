/** The pages there are, in the order of the zone strip. */
export const pages = ['bench', 'calls', 'sheet', 'limits', 'lessons'] as const;
export type PageName = (typeof pages)[number];

/** The page that the tail of an address asks for; the bench when it asks for none that there is. */
export const pageOf = (hash: string): PageName =>
  pages.find((page) => hash === `#${page}` || hash.startsWith(`#${page}/`)) ?? 'bench';
