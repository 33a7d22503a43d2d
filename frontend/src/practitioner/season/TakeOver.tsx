import { useState } from 'preact/hooks';
import { navigate } from '../../shared/router';
import type { Failure } from '../api/request';
import { Button, ButtonLink } from '../form/Button';
import { Several } from '../form/Choices';
import { Select } from '../form/Field';
import { FailureLine } from '../parts/status';
import { useWrite } from '../parts/useWrite';
import { t } from '../words';
import type { Desk } from './desk';
import { CIRCUITS_MAX, circuitsOf, firstChoice, hasUnsent, takeOver } from './take';

const HERE = '';

function useTaking(desk: Desk) {
  const { client, content, templates } = desk.program;
  const [source, choose] = useState(circuitsOf(content?.sessions ?? []).length > 0 ? HERE : (templates[0]?.id ?? HERE));
  const circuits = circuitsOf((source === HERE ? content?.sessions : templates.find(({ id }) => id === source)?.sessions) ?? []);
  const [chosen, setChosen] = useState<Record<string, string[]>>({ [HERE]: firstChoice(content, desk.plan.peek().circuits) });
  const picked = chosen[source] ?? circuits.map(({ key }) => key).slice(0, CIRCUITS_MAX);
  const [wants, setWants] = useState<string | null>(null);
  const write = useWrite();
  const go = async () => {
    const missing = await whatIsMissing(desk, picked);
    setWants(missing);
    if (missing) return;
    const done = await write.run(async () => (await takeOver(desk, source === HERE ? null : source, picked), true));
    if (done) navigate(`/clients/${client.id}/program`);
  };
  const pick = (keys: string[]) => setChosen({ ...chosen, [source]: keys.slice(0, CIRCUITS_MAX) });
  return { source, choose, circuits, picked, pick, wants, write, go };
}

async function whatIsMissing(desk: Desk, picked: readonly string[]): Promise<string | null> {
  if (!(await desk.settled())) return t('seaFirst');
  const { plan, trip } = desk.form.peek();
  if (!trip.trim()) return t('seaNameTrip');
  if (desk.proposed.peek()?.season.shortfalls.some(({ accepted }) => !accepted)) return t('seaChooseShort');
  return plan.strength_a_week > 0 && picked.length === 0 ? t('seaChooseCircuit') : null;
}

const isStale = (failure: Failure | null) => failure?.kind === 'problem' && failure.problem.status === 412;

/** Where the strength sessions come from, and the season into the draft. */
export function TakeOver({ desk }: { desk: Desk }) {
  const taking = useTaking(desk);
  const { client, templates } = desk.program;
  if (hasUnsent(client.id)) return <section class="sea-part"><p>{t('seaUnsent')} <ButtonLink small to={`/clients/${client.id}/program`}>{t('seaOpenProgram')}</ButtonLink></p></section>;
  const options = [{ value: HERE, label: t('seaSourceHere') }, ...templates.map(({ id, name }) => ({ value: id, label: name }))];
  const { circuits, write } = taking;
  return (
    <section class="sea-part" aria-labelledby="sea-take">
      <h2 id="sea-take">{t('seaTake')}</h2>
      <p>{t('seaTakeText')}</p>
      <Select label={t('seaSource')} value={taking.source} options={options} onChange={taking.choose} />
      {circuits.length > 0
        ? <Several legend={t('seaCircuits')} options={circuits.map(({ key, name }) => ({ value: key, label: name }))} value={taking.picked} onChange={taking.pick} />
        : <p class="soft">{t('seaNoCircuits')}</p>}
      <p role="alert" class="error">{taking.wants ?? (isStale(write.failure) ? t('seaStaleDraft') : '')}</p>
      <FailureLine failure={isStale(write.failure) ? null : write.failure} />
      <p role="status">{write.busy ? t('seaTaking') : ''}</p>
      <p><Button kind="main" onClick={() => void taking.go()}>{t('seaTakeGo')}</Button></p>
    </section>
  );
}
