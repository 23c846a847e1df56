const FORM = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

/** A moment (ISO 8601) as a person says it, in local time. */
export function moment(iso: string): string {
  return FORM.format(new Date(iso));
}

const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short' });

/** The day of a moment (ISO 8601), short, in local time: '5 Mar'. */
export function day(iso: string): string {
  return DAY.format(new Date(iso));
}

const FULL_DAY = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium' });

/** The day of a moment (ISO 8601) with its year, in local time: '5 Mar 2024'. */
export function fullDay(iso: string): string {
  return FULL_DAY.format(new Date(iso));
}
