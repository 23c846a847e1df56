import type { MicrometerSetup, OverFaceSetup } from './setup-entry';

type SetupWithPlaces = MicrometerSetup | OverFaceSetup;

/** The setup with what has changed of the place `id`. */
export function withPlace<S extends SetupWithPlaces>(
  setup: S,
  id: string,
  changed: Partial<S['places'][number]>,
): S {
  const places = setup.places.map((place) => (place.id === id ? { ...place, ...changed } : place));
  return { ...setup, places };
}

/** The setup without the place `id`. */
export function withoutPlace<S extends SetupWithPlaces>(setup: S, id: string): S {
  return { ...setup, places: setup.places.filter((place) => place.id !== id) };
}
