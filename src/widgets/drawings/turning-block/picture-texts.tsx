import { useMemo } from 'preact/hooks';
import { at, LINE } from '../geometry';
import { Text } from '../text';
import type { Picture } from './picture';
import { lines } from './picture-faces';
import type { Label } from './placing';
import { textsIn } from './texts';

/** Names of the faces, and of what stands high. */
export function PictureTexts({ picture }: { readonly picture: Picture }) {
  const texts = useMemo(() => textsIn(picture), [picture]);
  return (
    <g>
      {texts.names.map((name) => (
        <NameOfFace key={name.lines[0]} label={name} />
      ))}
      {texts.highTexts.map((text) => (
        <g key={text.lines.join(' ')}>
          {text.leader && <path class="turning-block-high-leader" d={lines([text.leader])} />}
          <Lines label={text} kind="drawing-high-word drawing-on-sheet" />
        </g>
      ))}
    </g>
  );
}

/** On its face, or beside the block with a line that ends in a dot on the face. */
function NameOfFace({ label }: { readonly label: Label }) {
  const dot = label.leader?.[1];
  if (label.leader === undefined || dot === undefined) {
    return <Lines label={label} kind="turning-block-name" />;
  }
  return (
    <g>
      <path class="drawing-leader" d={lines([label.leader])} />
      <circle class="turning-block-dot" cx={at(dot.x)} cy={at(dot.y)} r="3" />
      <Lines label={label} kind="drawing-on-sheet" />
    </g>
  );
}

function Lines({ label: { lines: texts, at: middle }, kind }: { label: Label; kind: string }) {
  const first = middle.y - ((texts.length - 1) * LINE) / 2;
  return (
    <g>
      {texts.map((line, index) => (
        <Text key={line} x={middle.x} y={first + index * LINE} kind={kind}>
          {line}
        </Text>
      ))}
    </g>
  );
}
