import { Button } from '../form/Button';
import { Several } from '../form/Choices';
import { Select } from '../form/Field';
import type { Movement } from './model';
import { named, o } from './words';

const MIDDLE = ['pelvis', 'back', 'head'];
const SIDED = ['foot', 'toes', 'heel', 'knee', 'hand', 'forearm', 'elbow'];
const CONTACTS = [...SIDED.flatMap((name) => [`${name}.R`, `${name}.L`]), ...MIDDLE];

const words = (contact: string): string => {
  const [name = '', side] = contact.split('.');
  return side ? `${named('contact', name)}, ${o(side === 'R' ? 'right' : 'left')}` : named('contact', name);
};

/** What bears weight through the whole movement, and where the person must not fall. */
export function Contacts({ movement, onChange }: { movement: Movement; onChange: (movement: Movement) => void }) {
  const known = [...new Set([...CONTACTS, ...movement.contacts])];
  const balance = movement.balance ?? 'always';
  return (
    <details>
      <summary>{o('contacts')}: {movement.contacts.map(words).join('; ') || o('balance_moving')}</summary>
      <Several legend={o('contacts')} hideLegend options={known.map((value) => ({ value, label: words(value) }))} value={movement.contacts} onChange={(contacts) => onChange({ ...movement, contacts, balance: contacts.length ? balance : 'moving' })} />
      <Select label={o('balance')} value={balance} options={(['always', 'keys', 'moving'] as const).filter((value) => movement.contacts.length || value === 'moving').map((value) => ({ value, label: o(`balance_${value}`) }))} onChange={(value) => onChange({ ...movement, balance: value })} />
      {movement.working.length > 0 && <Button small kind="quiet" onClick={() => onChange({ ...movement, working: [] })}>{o('tintDrop')}</Button>}
    </details>
  );
}
