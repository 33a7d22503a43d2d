import type { Kit } from '../../parts/Later';
import { wordsOf } from '../me/ownWords';

/** How the app comes to the home screen. */
export default function HomeScreen(kit: Kit) {
  const { Button, h } = kit;
  const w = wordsOf(kit.language.value);
  if (kit.isIos()) return h(Iphone, kit);
  const offer = kit.installOffer.value;
  return h('section', { class: 'block' },
    h('h2', null, w.homeTitle),
    h('p', null, w.homeText),
    offer && h(Button, { small: true, onClick: () => void offer.prompt(), children: w.homeNow }));
}

/** There the link of an invitation never opens the home-screen app: its code is taken along. */
function Iphone(kit: Kit) {
  const { Button, h } = kit;
  const [copied, setCopied] = kit.useState(false);
  const w = wordsOf(kit.language.value);
  const code = kit.linkCode.value;
  // Refused, it is copied by hand: it stands there.
  const copy = () => void navigator.clipboard.writeText(code ?? '').then(() => setCopied(true), () => undefined);
  return h('section', { class: 'sheet' },
    h('h2', null, kit.device.value ? w.homeTitle : w.iosFirst),
    h('p', null, code ? w.iosLink : w.iosText),
    code && h('p', null, h('b', null, kit.groupCode(code))),
    code && h(Button, { small: true, onClick: copy, children: w.iosCopy }),
    h('p', { class: 'note', role: 'status' }, copied && w.iosCopied));
}
