let memory = new Float64Array(0);

/**
 * Memory for `count` numbers, whatever they hold. It is lent until the next call, so that nothing
 * that is given out may stand in it.
 *
 * For speed: memory that is new has to be cleared and, where there is much of it, found anew by the
 * system for each fit, which can take longer than the fit.
 */
export function lend(count: number): Float64Array {
  if (memory.length < count) memory = new Float64Array(count);
  return memory.subarray(0, count);
}
