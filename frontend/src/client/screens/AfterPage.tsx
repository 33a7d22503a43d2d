import { After } from './after/After';
import { WalkEntry } from './after/WalkEntry';
import { NotFound } from './NotFound';
import { usePlanned } from './today/SessionView';

/** What is asked after a session, by its kind. */
export function AfterPage({ params }: { params: Record<string, string> }) {
  const planned = usePlanned(params.id ?? '');
  if (!planned || planned.session.kind === 'rest') return <NotFound />;
  return planned.session.kind === 'walk' ? <WalkEntry planned={planned} /> : <After planned={planned} />;
}

export const OtherWalk = () => <WalkEntry planned={null} />;
