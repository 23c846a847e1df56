import type { Problem } from '../entry/problems';

interface FieldMessageProps {
  readonly id: string;
  readonly problem?: Problem | undefined;
}

/** What is wrong with a field, or still missing from it, beside the field. */
export function FieldMessage({ id, problem }: FieldMessageProps) {
  if (problem === undefined) return null;
  return (
    <p id={id} class={`field-message field-message-${problem.kind}`}>
      {problem.message}
    </p>
  );
}
