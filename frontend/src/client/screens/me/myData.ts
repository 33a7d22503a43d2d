import { callRecord } from '../../../outbox/record';
import type { Kit } from '../../parts/Later';
import { wordsOf } from './ownWords';
import { hand } from './save';
import { SaveOwn } from './saveOwn';

/** What is between this person and the practice, beside the messages. */
export default function MyData(kit: Kit) {
  return kit.h('div', null, kit.h(Copy, kit), kit.h(NewCode, kit));
}

/** The same person again, with a code that the practice gave. */
function NewCode(kit: Kit) {
  const { Button, h } = kit;
  const w = wordsOf(kit.language.value);
  return h('section', { class: 'block' },
    h('h2', null, w.codeTitle),
    h('p', null, w.codeText),
    h('div', { class: 'stack' }, h(Button, { wide: true, onClick: kit.pairAnew, children: w.codeGo })));
}

/** A copy of all that the practice holds of this person; without a network, of what this phone holds. */
function Copy(kit: Kit) {
  const { Button, h } = kit;
  const [state, setState] = kit.useState<'' | 'working' | 'done' | 'away'>('');
  const language = kit.language.value;
  const w = wordsOf(language);
  const token = kit.device.value?.token;
  if (!token) return null;
  const load = async () => {
    if (state === 'working') return;
    setState('working');
    const zip = await callRecord((url, init) => fetch(url, init), token, language);
    if (zip) hand(zip, `steadfoot-record-${kit.day.value}.zip`);
    setState(zip ? 'done' : 'away');
  };
  const said = { '': '', working: w.dataWorking, done: w.dataDone, away: w.dataAway }[state];
  return h('section', { class: 'block' },
    h('h2', null, w.dataTitle),
    h('p', null, w.dataText),
    h('div', { class: 'stack' }, h(Button, { wide: true, onClick: () => void load(), children: w.dataButton })),
    h('p', { class: 'note', role: 'status' }, said),
    state === 'away' && h(SaveOwn, kit));
}
