import type { Finding } from './model';
import { named, o } from './words';

/** What a body cannot do in a drawing; the amount is told by the server in English. */
export function Findings({ found }: { found: readonly Finding[] }) {
  return (
    <div role="status" class={found.length ? 'own-findings' : 'soft'}>
      {found.length === 0 ? o('findingsNone') : (
        <>
          <p><b>{o('findingsHead', { n: found.length })}</b> {o('findingsText')}</p>
          <ul class="ed-plain">{found.map(({ fault, detail }) => <li key={fault + detail}>{named('fault', fault)}: <span lang="en">{detail}</span></li>)}</ul>
        </>
      )}
    </div>
  );
}
