import type { Verdict } from '../core/verdict/conformity';

const SIGNS = {
  in: 'M2 9L6 13L14 3',
  out: 'M3 3L13 13M13 3L3 13',
  'too close to call': 'M2 6.5Q5 2.5 8 5.5T14 4.5M2 12.5Q5 8.5 8 11.5T14 10.5',
  none: 'M8 3A5 5 0 1 0 8.01 3',
  erase: 'M6 3H15V13H6L1 8ZM8 6L12 10M12 6L8 10',
} as const satisfies Readonly<Record<Verdict | 'none' | 'erase', string>>;

/** A sign for the eye alone. Drawn, not lettered: not every font has them. */
export function DrawnSign({ sign }: { readonly sign: keyof typeof SIGNS }) {
  return (
    <svg class="drawn-sign" viewBox="0 0 16 16" aria-hidden="true">
      <path d={SIGNS[sign]} />
    </svg>
  );
}
