import { useEffect, useState } from 'preact/hooks';
import { doseWords } from '../../../shared/dose';
import { Button, ButtonLink } from '../../form/Button';
import { Field } from '../../form/Field';
import { Form } from '../../form/Form';
import { Doing } from '../../rights/Needs';
import { t } from '../../words';
import { unreadable, type Ready } from './choices';
import { DoseFields } from './DoseFields';
import type { Deciding } from './useDeciding';
import { Why } from './Why';

interface Props {
  one: Ready;
  client: string;
  /** Nothing else is to be decided: accepting publishes at once. */
  alone: boolean;
  deciding: Deciding;
}

function Decline({ one, deciding, onClose }: Pick<Props, 'one' | 'deciding'> & { onClose: () => void }) {
  const { id } = one.first;
  const name = `reason.${id}`;
  const [missing, setMissing] = useState(false);
  const { reason } = deciding.read(id);
  useEffect(() => document.getElementsByName(name)[0]?.focus(), []);
  const submit = (event: Event) => {
    event.preventDefault();
    setMissing(!reason.trim());
    if (reason.trim()) void deciding.decline(one);
    else document.getElementsByName(name)[0]?.focus();
  };
  return (
    <Form class="answer-words" onSubmit={submit}>
      <Field label={t('sugWhyNot')} hint={t('sugWhyNotHint')} name={name} value={reason} onInput={(text) => deciding.keep(id, { reason: text })} error={missing && !reason.trim() ? t('sugReasonMissing') : null} />
      <div class="answers"><Button small kind="main" type="submit" busy={deciding.busy !== null}>{t('sugDeclineNow')}</Button> <Button small kind="quiet" onClick={onClose}>{t('cancel')}</Button></div>
    </Form>
  );
}

function Answers({ one, client, alone, deciding }: Props) {
  const { id, exercise, then } = one.first;
  const { typed, marked } = deciding.read(id);
  const [opened, setOpened] = useState<'edit' | 'decline' | null>(Object.keys(typed).length > 0 ? 'edit' : null);
  const press = (what: 'edit' | 'decline') => setOpened(opened === what ? null : what);
  const accept = () => {
    const odd = unreadable(typed)[0];
    if (odd) return document.getElementsByName(`${odd}.${id}`)[0]?.focus();
    if (alone) void deciding.accept([one]);
    else deciding.keep(id, { marked: !marked });
  };
  const whose = <span class="sr">: {exercise}</span>;
  return (
    <>
      {opened === 'edit' && then && <DoseFields id={id} dose={then} typed={typed} onChange={(to) => deciding.keep(id, { typed: to })} />}
      <div class="answers">
        <Button small kind={alone && opened !== 'decline' ? 'main' : 'other'} onClick={accept} busy={alone && deciding.busy !== null} {...(!alone && { 'aria-pressed': marked })}>{!alone && marked ? '✓ ' : ''}{t(alone && opened === 'edit' ? 'sugAcceptChanged' : 'sugAccept')}{whose}</Button>
        {then
          ? <Button small aria-expanded={opened === 'edit'} onClick={() => press('edit')}>{t('sugChange')}{whose}</Button>
          : <ButtonLink small to={`/clients/${client}/program`}>{t('sugChangeProgram')}{whose}</ButtonLink>}
        <Button small kind="quiet" aria-expanded={opened === 'decline'} onClick={() => press('decline')}>{t('sugDecline')}{whose}</Button>
      </div>
      {opened === 'decline' && <Decline one={one} deciding={deciding} onClose={() => setOpened(null)} />}
    </>
  );
}

/** One suggestion: what, why, and the answers to it. */
export function Sheet(props: Props) {
  const { first, all } = props.one;
  return (
    <section class="suggest-sheet" aria-labelledby={`sug-${first.id}`}>
      <h3 id={`sug-${first.id}`} lang="en">{first.suggestion === 'deload' ? first.session : `${first.exercise}, ${first.variant}`}</h3>
      <p lang="en"><b>{first.sentence}</b></p>
      {first.effect && <p lang="en">{first.effect}</p>}
      {all.length > 1 && <p class="note soft" lang="en">{all.map(({ exercise }) => exercise).join(', ')}</p>}
      {first.then && <p class="note">{t('sugNow', { dose: doseWords(first.now) })}</p>}
      <Why one={first} />
      <Doing><Answers {...props} /></Doing>
    </section>
  );
}
