import type { Kit } from '../../parts/Later';
import { wordsOf } from '../me/ownWords';

/** How it comes to the home screen of an iPhone, and how a link's code gets there: the link itself never opens that app. */
export default function Iphone(kit: Kit) {
  const { Button, h } = kit;
  const [copied, setCopied] = kit.useState(false);
  const w = wordsOf(kit.language.value);
  const code = kit.linkCode.value;
  // Refused, it is copied by hand: it stands there.
  const copy = () => void navigator.clipboard.writeText(code ?? '').then(() => setCopied(true), () => undefined);
  return h('section', { class: 'sheet' },
    h('h2', null, kit.device.value ? w.iosTitle : w.iosFirst),
    h('p', null, code ? w.iosLink : w.iosText),
    code && h('p', null, h('b', null, code.replace(/(.{4})(?=.)/g, '$1-'))),
    code && h(Button, { small: true, onClick: copy, children: w.iosCopy }),
    h('p', { class: 'note', role: 'status' }, copied && w.iosCopied));
}
