const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

// The browser's own formatters take a phone some 20 ms each to be made, for three words in one language.

/** A moment (ISO 8601) as a person says it, in local time: '5 Mar 2024, 14:07'. */
export function moment(iso: string): string {
  return `${fullDay(iso)}, ${clock(iso)}`;
}

/** The time of a moment (ISO 8601), in local time: '14:07'. */
function clock(iso: string): string {
  const at = new Date(iso);
  return [at.getHours(), at.getMinutes()]
    .map((number) => String(number).padStart(2, '0'))
    .join(':');
}

/** Short names of moments that stand side by side: their days, or the times of one and the same day. */
export function besideEachOther(moments: readonly string[]): readonly string[] {
  const isOneDay = new Set(moments.map(fullDay)).size === 1;
  return moments.map(isOneDay ? clock : day);
}

/** The day of a moment (ISO 8601), short, in local time: '5 Mar'. */
export function day(iso: string): string {
  const at = new Date(iso);
  return `${at.getDate()} ${MONTHS[at.getMonth()]}`;
}

/** The day of a moment (ISO 8601) with its year, in local time: '5 Mar 2024'. */
export function fullDay(iso: string): string {
  return `${day(iso)} ${new Date(iso).getFullYear()}`;
}
