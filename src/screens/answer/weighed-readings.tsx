import { shop } from '../../state/shop';
import { deviationNumber, rounded } from '../../words/numbers';

interface WeighedReadingsProps {
  readonly caption: string;
  /** What the weights are called in the heading. */
  readonly weights: 'weight' | 'share';
  readonly rows: readonly {
    readonly name: string;
    /** µm */
    readonly value: number;
    readonly weight: number;
  }[];
  /** What the products come to, µm. */
  readonly total: number;
}

/** Readings times their weights, added up, to be followed with a pencil. */
export function WeighedReadings({ caption, weights, rows, total }: WeighedReadingsProps) {
  const { deviation } = shop.value.units;
  const bare = (value: number) => deviationNumber(value, deviation);
  return (
    <table>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Reading</th>
          <th scope="col">{deviation}</th>
          <th scope="col">× {weights}</th>
          <th scope="col">=</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, value, weight }, index) => (
          <tr key={`${name} ${index}`}>
            <th scope="row">{name}</th>
            <td>{bare(value)}</td>
            <td>{rounded(weight, 4)}</td>
            <td>{bare(value * weight)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">Together</th>
          <td />
          <td />
          <td>{bare(total)}</td>
        </tr>
      </tfoot>
    </table>
  );
}
