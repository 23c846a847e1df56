/**
 * The polynomial of least degree through `values` at `places`, in the barycentric form (Berrut and
 * Trefethen, SIAM Review 46, 2004). Trust it between places that lie closer at both ends, as those
 * of Gauss and Legendre do.
 *
 * @throws RangeError where there are no places, not as many values, or two places alike.
 */
export function polynomialThrough(
  places: readonly number[],
): (values: readonly number[], at: number) => number {
  if (places.length === 0 || new Set(places).size < places.length) {
    throw new RangeError('A polynomial goes through places that differ');
  }
  const weights = places.map((place, index) =>
    places.reduce((product, other, at) => (at === index ? product : product / (place - other)), 1),
  );
  return (values, at) => {
    if (values.length !== places.length) throw new RangeError('Each place has one value');
    const here = places.indexOf(at);
    if (here >= 0) return values[here]!;
    let above = 0;
    let below = 0;
    places.forEach((place, index) => {
      const share = weights[index]! / (at - place);
      above += share * values[index]!;
      below += share;
    });
    return above / below;
  };
}
