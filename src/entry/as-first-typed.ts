interface TypedIn<Unit> {
  readonly text: string;
  readonly unit: Unit;
  readonly from?: { readonly text: string; readonly unit: Unit };
}

/**
 * What was typed, before any change of units: where the text has been changed since, that is it.
 *
 * @param converts a text that was typed in a unit of its own as it is shown in another; undefined where it is no number.
 */
export function asFirstTyped<Unit>(
  { text, unit, from }: TypedIn<Unit>,
  converts: (text: string, own: Unit, unit: Unit) => string | undefined,
): { readonly text: string; readonly unit: Unit } {
  const stands = from !== undefined && converts(from.text, from.unit, unit) === text;
  return stands ? from : { text, unit };
}
