import {
  addDependencies,
  create,
  divideDependencies,
  type FactoryFunctionMap,
  type MathNode,
  multiplyDependencies,
  type OperatorNode,
  type ParenthesisNode,
  parseDependencies,
  subtractDependencies,
  unaryMinusDependencies,
  unaryPlusDependencies,
} from 'mathjs/number';
import type { Arithmetic } from '../../entry/arithmetic';
import { UNIT_WORTHS } from '../../entry/expression';

// Of numbers alone, with nothing but what a sum takes. The package's types leave open that it has these.
const { parse } = create({
  parseDependencies,
  addDependencies,
  subtractDependencies,
  multiplyDependencies,
  divideDependencies,
  unaryMinusDependencies,
  unaryPlusDependencies,
} as FactoryFunctionMap);

/** Works out sums of numbers and lengths with mathjs. */
export const evaluate: Arithmetic = (expression) => {
  let node: MathNode;
  try {
    node = parse(expression);
  } catch {
    return 'not well formed';
  }
  const power = powerOf(node);
  if (typeof power === 'string') return power;
  const value: unknown = node.evaluate({ ...UNIT_WORTHS });
  return typeof value === 'number' ? { value, power } : 'not well formed';
};

/** The power of length that a part of an expression is of. Refuses all that is not arithmetic. */
function powerOf(node: MathNode): number | 'mixed' | 'not well formed' {
  switch (node.type) {
    case 'ConstantNode':
      return 0;
    case 'SymbolNode':
      return Object.hasOwn(UNIT_WORTHS, node.toString()) ? 1 : 'not well formed';
    case 'ParenthesisNode':
      return powerOf((node as ParenthesisNode).content);
    case 'OperatorNode':
      return powerOfOperation(node as OperatorNode);
    default:
      return 'not well formed';
  }
}

function powerOfOperation({ fn, args }: OperatorNode) {
  const powers = args.map(powerOf);
  const refused = powers.find((power) => typeof power === 'string');
  if (refused !== undefined) return refused;
  const [first = 0, second = 0] = powers as number[];
  switch (fn as string) {
    case 'unaryMinus':
    case 'unaryPlus':
      return first;
    case 'add':
    case 'subtract':
      return first === second ? first : 'mixed';
    case 'multiply':
      return first + second;
    case 'divide':
      return first - second;
    default:
      return 'not well formed';
  }
}
