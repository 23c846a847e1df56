/**
 * What stands against a field: wrong must be put right before any answer, waiting is still being
 * read, missing is still to come, and what is doubtful is only to be looked at again.
 */
export interface Problem {
  readonly kind: 'wrong' | 'waiting' | 'missing' | 'doubtful';
  readonly message: string;
}

/** Problems by the key of the field that they stand beside. */
export type Problems = ReadonlyMap<string, Problem>;

/** Collects problems; the first one found of a field is the one shown. */
export class ProblemList {
  readonly #problems = new Map<string, Problem>();

  wrong(field: string, message: string): void {
    this.#add(field, { kind: 'wrong', message });
  }

  waiting(field: string, message: string): void {
    this.#add(field, { kind: 'waiting', message });
  }

  missing(field: string, message: string): void {
    this.#add(field, { kind: 'missing', message });
  }

  doubtful(field: string, message: string): void {
    this.#add(field, { kind: 'doubtful', message });
  }

  get all(): Problems {
    return this.#problems;
  }

  #add(field: string, problem: Problem): void {
    if (!this.#problems.has(field)) this.#problems.set(field, problem);
  }
}

/** The problems without what is only still to come. */
export function withoutMissing(problems: Problems): Problems {
  return new Map([...problems].filter(([, { kind }]) => kind !== 'missing'));
}

/** True where something typed is wrong, so that no answer may be given. */
export function anyWrong(problems: Problems): boolean {
  return [...problems.values()].some(({ kind }) => kind === 'wrong');
}

/** True where something typed cannot be read yet, so that no answer may be given before it is. */
export function anyWaiting(problems: Problems): boolean {
  return [...problems.values()].some(({ kind }) => kind === 'waiting');
}
