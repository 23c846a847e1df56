import { effect } from '@preact/signals';
import { savingState } from './saving';

/** Has the browser ask before the page is left with something that is nowhere but in it. */
export function askBeforeLeaving(): void {
  const ask = (event: Event) => event.preventDefault();
  effect(() => {
    if (savingState.value !== 'not saved') return;
    addEventListener('beforeunload', ask);
    return () => removeEventListener('beforeunload', ask);
  });
}
