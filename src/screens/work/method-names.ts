import type { WorkMethod } from '../../store/records';

/** Each way of working, as it begins 'Lapped the bottom'. */
export const METHOD_NAMES: Readonly<Record<WorkMethod, string>> = {
  lap: 'Lapped',
  grind: 'Ground',
  machine: 'Machined',
  scrape: 'Scraped',
};
