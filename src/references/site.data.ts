/** Sources of the site room. */
export const SITE_REFERENCES = {} as const;
