import { fieldKey } from './field-keys';
import type { SetupEntry } from './setup-entry';

/** The key of the field that the reading `id` was typed into; undefined for what was not typed, such as how a block sat. */
export function fieldOfReading(setups: readonly SetupEntry[], id: string): string | undefined {
  return setups.flatMap(fieldsIn).find(([reading]) => reading === id)?.[1];
}

/** The readings of a setup, each with its field. */
function fieldsIn(setup: SetupEntry): readonly (readonly [string, string])[] {
  switch (setup.kind) {
    case 'nose comparator':
      return setup.placings.map(({ id }) => [id, fieldKey.placing(id)] as const);
    case 'column':
      return setup.placings.flatMap(({ id: placing }) =>
        setup.heights.map(
          ({ id }) => [`${placing} ${id}`, fieldKey.traverse(placing, id)] as const,
        ),
      );
    case 'micrometer':
      return setup.places.map(({ id }) => [id, fieldKey.thickness(id)] as const);
    case 'over the top':
    case 'face map':
      return setup.places.map(({ id }) => [id, fieldKey.placing(id)] as const);
    case 'assumed parallel':
      return [[setup.id, fieldKey.within(setup.id)]];
  }
}
