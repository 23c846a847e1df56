import fc from 'fast-check';
import { type Outcome, outcomeOf } from './outcome';
import { type TypedInspection, typedInspections } from './typed-inspections';

/** How many inspections are generated from one seed: a failure is told by its seed and its number. */
const BATCH = 500;

/** What became of many inspections. */
export type Tally = Readonly<Record<Outcome, number>>;

/**
 * Generates `count` inspections, the first ones from `seed`, and takes each the whole way.
 *
 * @throws Error with the seed, what was typed and what went wrong.
 */
export function attackWith(count: number, seed: number): Tally {
  const tally = { refused: 0, 'nothing read': 0, answered: 0 };
  for (let done = 0; done < count; done += BATCH) {
    const from = seed + done / BATCH;
    const samples = fc.sample(typedInspections, {
      numRuns: Math.min(BATCH, count - done),
      seed: from,
    });
    for (const typed of samples) tally[outcomeTold(typed, from)] += 1;
    if (count > BATCH) console.log(`to seed ${from}: ${JSON.stringify(tally)}`);
  }
  return tally;
}

function outcomeTold(typed: TypedInspection, seed: number): Outcome {
  try {
    return outcomeOf(typed);
  } catch (error) {
    throw new Error(`Seed ${seed}: ${error}\n${JSON.stringify(typed)}`, { cause: error });
  }
}
