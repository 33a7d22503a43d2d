import type { Kit } from '../../parts/Later';
import { wordsOf } from './ownWords';
import { SaveOwn } from './saveOwn';

/** The record is gone at the practice. What is here stays until the person says otherwise: that is done under "Me". */
export default function Erased(kit: Kit) {
  const { ButtonLink, h } = kit;
  const w = wordsOf(kit.language.value);
  return h('section', { class: 'sheet' },
    h('h2', null, w.erasedTitle),
    h('p', null, w.erasedText),
    h(SaveOwn, kit),
    h('div', { class: 'row' },
      h(ButtonLink, { small: true, to: '/me', children: w.erasedRemove }), ' ',
      h(ButtonLink, { small: true, to: '/pair', children: w.erasedCode })));
}
