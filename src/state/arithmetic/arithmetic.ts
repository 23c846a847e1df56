import { signal } from '@preact/signals';
import { type ArithmeticSoFar, provideArithmetic } from '../../entry/arithmetic';

/** What works out sums: with its package it is loaded when the first sum is met. */
export const arithmetic = signal<ArithmeticSoFar>('waiting');

let asked = false;

// Whatever reads a sum follows the signal, hence is worked out again once it is there.
provideArithmetic(() => {
  if (!asked) {
    asked = true;
    void load();
  }
  return arithmetic.value;
});

async function load(): Promise<void> {
  try {
    const { evaluate } = await import('./evaluate');
    arithmetic.value = evaluate;
  } catch (error) {
    console.error(error);
    arithmetic.value = 'missing';
  }
}
