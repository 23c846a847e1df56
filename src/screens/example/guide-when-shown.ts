import { loadedWhenShown } from '../../widgets/loaded-when-shown';

/** The guide through the example: those who know the job never load it. */
export const GuideWhenShown = loadedWhenShown(
  async () => (await import('./example-guide')).ExampleGuide,
);
