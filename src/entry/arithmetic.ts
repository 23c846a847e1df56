/** What a sum comes to: of `power` 0 a plain number, of 1 a length in µm, of 2 an area, and so on. */
export interface Sum {
  readonly value: number;
  readonly power: number;
}

/** Why there is none: the signs and brackets do not fit, or a length is added to a plain number. */
export type NoSum = 'not well formed' | 'mixed';

/** Works out an expression that `checkExpression` has let pass. Never throws. */
export type Arithmetic = (expression: string) => Sum | NoSum;

/** While it is not there, whether it is still to come. */
export type ArithmeticSoFar = Arithmetic | 'waiting' | 'missing';

let ask: () => ArithmeticSoFar = () => 'missing';

/**
 * Says who works out sums. They take a package, which is loaded only once there is a sum to work out:
 * plain numbers never need it.
 */
export function provideArithmetic(provider: () => ArithmeticSoFar): void {
  ask = provider;
}

/** Who works out sums; asking for it is what gets it loaded. */
export function arithmeticSoFar(): ArithmeticSoFar {
  return ask();
}
