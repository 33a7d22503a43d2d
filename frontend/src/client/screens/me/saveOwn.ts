import type { Kit } from '../../parts/Later';
import { wordsOf } from './ownWords';
import { saveOwn } from './save';

/** What this phone holds, as a file. */
export function SaveOwn(kit: Kit) {
  const { Button, h } = kit;
  const [failed, setFailed] = kit.useState(false);
  const w = wordsOf(kit.language.value);
  const save = () => void saveOwn(kit).then(() => setFailed(false), () => setFailed(true));
  return h('div', null, h(Button, { small: true, onClick: save, children: w.ownButton }), h('p', { class: 'trouble', role: 'alert' }, failed && w.ownFailed));
}
