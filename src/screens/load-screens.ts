import { whenIdle } from '../state/idle';

/** The code of each screen but the bench: loaded when it is first needed, and kept for offline use. */
export const loadScreen = {
  kit: async () => (await import('./kit/kit-screen')).KitScreen,
  drawer: async () => (await import('./kit/drawer-screen')).DrawerScreen,
  rates: async () => (await import('./rates-screen')).RatesScreen,
  part: async () => (await import('./part-screen')).PartScreen,
  drawing: async () => (await import('./drawing/drawing-screen')).DrawingScreen,
  plate: async () => (await import('./plate/plate-screen')).PlateScreen,
  files: async () => (await import('./files/files-screen')).FilesScreen,
  record: async () => (await import('./record/record-screen')).RecordScreen,
  table: async () => (await import('./table/table-screen')).TableScreen,
  work: async () => (await import('./work/work-screen')).WorkScreen,
  comparators: async () => (await import('./comparators-screen')).ComparatorsScreen,
  compare: async () => (await import('./story/compare-screen')).CompareScreen,
} as const;

/** How long a browser that does not tell when it is idle is left alone, ms. */
const PAUSE = 200;

/** What the main job comes through, in its order. */
const MAIN_JOB = ['drawing', 'part', 'plate', 'work', 'record', 'compare'] as const;

/**
 * Loads the screens of the main job while there is nothing else to do, one at a time, so that no tap
 * has to wait for their code, and then has what they reckon with compiled.
 */
export async function loadAhead(): Promise<void> {
  const idle = () => new Promise<void>((resolve) => whenIdle(resolve, PAUSE));
  for (const screen of MAIN_JOB) {
    await idle();
    await loadScreen[screen]();
  }
  const { warmUp } = await import('../state/warm-up');
  const steps = warmUp();
  do await idle();
  while (steps.next().done !== true);
}
