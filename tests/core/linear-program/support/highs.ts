import loadHighs, { type ModelData } from 'highs';
import type { LinearProgram } from '../../../../src/core/linear-program/program';

const highs = await loadHighs();

/** What HiGHS makes of a program. */
export interface AnswerOfHighs {
  readonly status: 'optimal' | 'infeasible' | 'unbounded' | 'not decided';
  readonly value: number;
}

/** Minimises the first objective by HiGHS, at its narrowest tolerances. */
export function minimiseByHighs(given: LinearProgram): AnswerOfHighs {
  const program = given.objectives[0]!.length > 0 ? given : withIdleVariable(given);
  const { optimal, infeasible, unbounded, unboundedOrInfeasible, unknown, empty } =
    highs.constants.modelStatus;
  return highs.withModel(forHighs(program), (model): AnswerOfHighs => {
    model.options.set({
      output_flag: false,
      presolve: 'off',
      primal_feasibility_tolerance: 1e-10,
      dual_feasibility_tolerance: 1e-10,
    });
    const { modelStatus } = model.run();
    const value = Number(model.info.get('objective_function_value'));
    switch (modelStatus) {
      case optimal:
      case empty:
        return { status: 'optimal', value };
      case infeasible:
        return { status: 'infeasible', value };
      case unbounded:
        return { status: 'unbounded', value };
      case unboundedOrInfeasible:
      case unknown:
        return { status: 'not decided', value };
      default:
        throw new Error(`HiGHS: ${modelStatus}`);
    }
  });
}

/** Without any variable HiGHS does not look at the rows. */
function withIdleVariable({ rows }: LinearProgram): LinearProgram {
  return { objectives: [[0]], rows: rows.map((row) => ({ ...row, weights: [0] })) };
}

function forHighs({ objectives, rows, free }: LinearProgram): ModelData {
  const costs = Array.from(objectives[0]!);
  const { infinity } = highs;
  const size = costs.length;
  return {
    numCols: size,
    numRows: rows.length,
    colCost: costs,
    colLower: costs.map((_, j) => (free?.[j] ? -infinity : 0)),
    colUpper: costs.map(() => infinity),
    rowLower: rows.map(({ sense, limit }) => (sense === '<=' ? -infinity : limit)),
    rowUpper: rows.map(({ sense, limit }) => (sense === '>=' ? infinity : limit)),
    matrix: {
      format: 'csr',
      numRows: rows.length,
      numCols: size,
      starts: Int32Array.from({ length: rows.length + 1 }, (_, row) => row * size),
      indices: Int32Array.from({ length: rows.length * size }, (_, at) => at % size),
      values: Float64Array.from(rows.flatMap(({ weights }) => Array.from(weights))),
    },
  };
}
