import { h, type ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { device, exportText, groupCode } from '../../outbox';
import { Button, ButtonLink } from '../../shared/form/Button';
import { language } from '../../shared/words/mechanism';
import { day } from '../phone';
import { installOffer, isIos } from '../screens/pair/install';
import { linkCode, pairAnew } from '../screens/pair/pending';

/** What a part gets handed: were it to import these, or JSX, the first load would fall into more and larger files. */
const kit = { Button, ButtonLink, day, device, exportText, groupCode, h, installOffer, isIos, language, linkCode, pairAnew, useState };
export type Kit = typeof kit;

/** A part that most visits never need: it is fetched when it is to be shown, and is on the phone like all others. */
export function Later({ load }: { load: () => Promise<{ default: ComponentType<Kit> }> }) {
  const [Part, setPart] = useState<ComponentType<Kit> | null>(null);
  useEffect(() => void load().then((found) => setPart(() => found.default), () => undefined), []);
  return Part && <Part {...kit} />;
}
