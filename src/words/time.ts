const FORM = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

/** A moment (ISO 8601) as a person says it, in local time. */
export function moment(iso: string): string {
  return FORM.format(new Date(iso));
}
