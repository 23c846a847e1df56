import type { TypedLength } from '../../../src/entry/typed-length';

/** A field with its unit, as typed. */
export const mm = (text: string): TypedLength => ({ text, unit: 'mm' });
export const inch = (text: string): TypedLength => ({ text, unit: 'in' });
export const micro = (text: string): TypedLength => ({ text, unit: 'µm' });
export const tenths = (text: string): TypedLength => ({ text, unit: 'tenths' });
