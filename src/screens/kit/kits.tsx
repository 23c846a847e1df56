import { addKit, kitName, setKitName, takeKit } from '../../state/kits';
import { shop } from '../../state/shop';
import { TextField } from '../../widgets/text-field';

/** Which kit is in use, and the others of the shop. */
export function Kits() {
  const others = shop.value.otherKits ?? [];
  return (
    <>
      <TextField id="kit-name" label="Kit in use" text={kitName.value} onText={setKitName} />
      <div class="row">
        {others.map(({ name }, index) => (
          <button
            key={`${index} ${name}`}
            type="button"
            class="button"
            onClick={() => takeKit(index)}
          >
            Use {name.trim() || `the kit at place ${index + 1}`}
          </button>
        ))}
        <button type="button" class="button" onClick={addKit}>
          Add another kit
        </button>
      </div>
    </>
  );
}
