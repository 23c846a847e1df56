import { Page } from '../widgets/page';
import { to } from './paths';

/** A screen that only says something. */
export function Message({ title, text }: { readonly title: string; readonly text: string }) {
  return (
    <Page title={title} back={{ to: to.bench(), name: 'the bench' }}>
      <p>{text}</p>
    </Page>
  );
}
