import { Fold } from '../../widgets/fold';

/** The usual cautions where work is proposed. They defer to the shop's own rules. */
export function Cautions() {
  return (
    <Fold summary="Before you work: the usual cautions">
      <ul class="stack small">
        <li>Your shop’s rules and the makers’ instructions come before anything said here.</li>
        <li>
          Kerosene and other solvents burn and their vapour is bad to breathe: little of it, good
          air, no flame or spark, rags in a closed metal bin. Wear gloves that the solvent does not
          go through.
        </li>
        <li>
          Abrasive and metal dust: work wet, wipe and do not blow, protect eyes and lungs. Fine
          aluminium or magnesium dust can burn.
        </li>
        <li>
          Fresh edges and burrs cut: stone them lightly before you handle or measure the part, and
          keep grit off the surface plate.
        </li>
        <li>
          Grinding: the wheel sound and guarded, the part held safely. A magnetic chuck does not
          hold aluminium, brass or most stainless steel.
        </li>
        <li>Wash the part, let it come to the temperature of the plate, then measure.</li>
      </ul>
    </Fold>
  );
}
