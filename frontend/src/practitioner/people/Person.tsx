import { useRef, useState } from 'preact/hooks';
import { dayShort, today } from '../../shared/dates';
import { changeColleague, resetSecondFactor, welcomeBack, type Colleague, type ColleagueLink, type Role } from '../api/account';
import { me } from '../api/session';
import { Button } from '../form/Button';
import { Select } from '../form/Field';
import { say } from '../parts/status';
import { Ask } from '../account/Ask';
import { t } from '../words';
import { MadeLink } from './MadeLink';
import { roleOptions } from './roles';

type Change = { kind: 'role'; role: Role } | { kind: 'disable' } | { kind: 'enable' } | { kind: 'reset' } | { kind: 'back' };

/** What is asked, done and said for each change. */
function sayings(person: Colleague, change: Change, own: boolean) {
  const name = person.display_name;
  if (change.kind === 'reset') {
    return { title: t('pplResetTitle'), text: t('pplResetText', { name }), button: t('pplReset'), done: t('pplResetDone', { name }), write: () => resetSecondFactor(person.id) };
  }
  if (change.kind === 'back') {
    return { title: t('pplBackTitle', { name }), text: t('pplBackText', { name }), button: t('pplBack'), done: null, write: () => welcomeBack(person.id) };
  }
  if (change.kind === 'role') {
    const role = t(`role_${change.role}`);
    const text = t(own ? 'pplRoleOwn' : 'pplRoleText', { role, text: t(`roleText_${change.role}`) });
    return { title: t('pplRoleTitle', { name }), text, button: t('save'), done: t('pplRoleDone', { name, role }), write: () => changeColleague(person.id, { role: change.role }) };
  }
  const disabled = change.kind === 'disable';
  return {
    title: disabled ? t('pplDisableTitle', { name }) : t('pplEnable'),
    text: disabled ? t('pplDisableText', { name }) : name,
    button: disabled ? t('pplDisable') : t('pplEnable'),
    done: t(disabled ? 'pplDisabledDone' : 'pplEnabledDone', { name }),
    write: () => changeColleague(person.id, { disabled }),
  };
}

/** One person of the practice, and what an owner may change about them. */
export function Person({ person, onChanged }: { person: Colleague; onChanged: () => void }) {
  const [change, setChange] = useState<Change | null>(null);
  const [link, setLink] = useState<ColleagueLink | null>(null);
  const item = useRef<HTMLLIElement>(null);
  const { display_name: name, disabled_at: since } = person;
  const own = person.id === me.value?.practitioner.id;
  const zone = me.value?.practice.time_zone ?? 'UTC';
  const told = [own && t('pplYou'), person.email, t(person.second_factor ? 'pplFactorYes' : 'pplFactorNo'), since && t('pplDisabled', { date: dayShort(today(new Date(since), zone)) })];
  const asked = change && sayings(person, change, own);
  const done = (answer: Colleague | ColleagueLink | undefined) => {
    if (asked?.done) say(asked.done);
    if (answer && 'url' in answer) setLink(answer);
    onChanged();
  };
  const close = () => {
    setLink(null);
    item.current?.querySelector('select')?.focus(); // the button that had the focus is gone
  };
  return (
    <li ref={item}>
      <b>{name}</b>
      <span class="soft">{told.filter(Boolean).join(' · ')}</span>
      <Select label={t('pplRole', { name })} value={person.role} options={roleOptions()} onChange={(role) => role !== person.role && setChange({ kind: 'role', role })} />
      {!own && person.second_factor && <Button small aria-label={t('pplResetNamed', { name })} onClick={() => setChange({ kind: 'reset' })}>{t('pplReset')}</Button>}
      {!own && !since && <Button small aria-label={t('pplBackNamed', { name })} onClick={() => setChange({ kind: 'back' })}>{t('pplBack')}</Button>}
      {!own && !since && <Button small aria-label={t('pplDisableNamed', { name })} onClick={() => setChange({ kind: 'disable' })}>{t('pplDisable')}</Button>}
      {since && <Button small aria-label={t('pplEnableNamed', { name })} onClick={() => setChange({ kind: 'enable' })}>{t('pplEnable')}</Button>}
      <Ask open={asked !== null} title={asked?.title ?? ''} button={asked?.button ?? ''} onClose={() => setChange(null)} write={async () => asked?.write()} onDone={done}>{asked?.text}</Ask>
      {link && <MadeLink name={name} link={link} onClose={close} />}
    </li>
  );
}
