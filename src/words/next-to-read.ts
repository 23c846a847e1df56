import type { Asked } from '../core/part/requirement';
import { requirementName } from './faces';

interface NextInWords {
  readonly name: string;
  readonly requirements: readonly Asked[];
  readonly difference: boolean;
}

/** What the next reading is and will tell: 'Next Left side: it fixes right square to bottom'. */
export function nextToReadInWords({ name, requirements, difference }: NextInWords): string {
  const [first] = requirements;
  if (first !== undefined) {
    const others = requirements.length > 1 ? ` and ${requirements.length - 1} more` : '';
    return `Next: ${name}. It fixes ${lowered(requirementName(first))}${others}`;
  }
  return difference ? `Next: ${name}. It shows what the sides differ by` : `Next: ${name}`;
}

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
