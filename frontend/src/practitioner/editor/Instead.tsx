import { useState } from 'preact/hooks';
import type { Region } from '../../shared/body/places';
import type { Prescription } from '../../shared/program';
import { s } from '../../shared/words/shared';
import type { Schemas } from '../api/types';
import { useResource } from '../api/resource';
import { Button } from '../form/Button';
import { Select } from '../form/Field';
import { Input } from '../form/bare';
import { missingKit, variantOf } from '../exercises/entry';
import { qualitiesOf, regionsOf } from '../exercises/filter';
import { ReadFailure } from '../parts/status';
import type { Editor } from './editor';
import { focusSoon } from './focus';
import { allowInstead, alternativesPath, mayAllow, putInstead, type Wish } from './instead';
import { exerciseName } from './phrases';
import { coded, e } from './words';

type Alternative = Schemas['AlternativeOut'];

interface InsteadProps {
  editor: Editor;
  /** Key of the session. */
  session: string;
  one: Prescription;
}

/** Asks the library for another exercise in this one's place; offered loudly where the house lacks what the rung needs. */
export function Instead({ editor, session, one }: InsteadProps) {
  const [open, setOpen] = useState(false);
  const entry = editor.library.get(one.exercise);
  if (!entry) return null;
  const lacks = missingKit(variantOf(entry, one.variant)?.kit ?? [], editor.client.value.kit);
  const [button, heading] = [`instead-${one.key}`, `instead-of-${one.key}`];
  const close = () => {
    setOpen(false);
    focusSoon(button);
  };
  const use = (found: Alternative) => {
    setOpen(false);
    editor.edit((now) => putInstead(now, session, one.key, editor.library, found.exercise, found.variant));
    editor.say(e('insteadUsed', { name: found.name, variant: found.variant_name, was: entry.name }), true);
    focusSoon(`rx-${one.key}`);
  };
  const allow = (found: Alternative) => {
    setOpen(false);
    editor.edit((now) => allowInstead(now, session, one.key, editor.library, found.exercise, found.variant, found.reasons[0]?.sentence ?? ''));
    editor.say(e('allowedAdded', { name: found.name, variant: found.variant_name, was: entry.name }), true);
    focusSoon(`rx-${one.key}`);
  };
  if (open) return <Offers editor={editor} one={one} heading={heading} onUse={use} onAllow={allow} onClose={close} />;
  return (
    <p class="ed-row">
      {lacks.length > 0 && <span class="call">{e('notInHouse', { kit: lacks.map((each) => coded('kit', each)).join(', ') })}</span>}
      <Button small id={button} {...(lacks.length ? {} : { kind: 'quiet' as const })} onClick={() => (setOpen(true), focusSoon(heading))} aria-label={`${e('instead')}: ${entry.name}`}>{e('instead')}</Button>
    </p>
  );
}

interface OffersProps {
  editor: Editor;
  one: Prescription;
  /** Id for the heading. */
  heading: string;
  onUse: (found: Alternative) => void;
  /** To choose for the client, beside what is prescribed. */
  onAllow: (found: Alternative) => void;
  onClose: () => void;
}

function Offers({ editor, one, heading, onUse, onAllow, onClose }: OffersProps) {
  const { kit } = editor.client.value;
  const [wish, setWish] = useState<Wish>({ onlyHouse: kit.length > 0, spare: '', trains: '' });
  const { data, failure, asOf, reload } = useResource<Schemas['AlternativesOut']>(alternativesPath(one, editor.library, kit, wish));
  const name = exerciseName(one, editor.library);
  const told = data ? data.nothing_fits ?? e('insteadFound', { n: data.items.length }) : failure ? '' : e('insteadAsking');
  return (
    <section class="ed-find" aria-labelledby={heading} onKeyDown={(event) => event.key === 'Escape' && onClose()}>
      <h4 id={heading} tabIndex={-1}>{e('insteadOf', { name })}</h4>
      <Wishes editor={editor} wish={wish} onChange={setWish} />
      <ReadFailure failure={failure} asOf={asOf} onRetry={() => void reload()} />
      <p role="status" class="soft" lang={data?.nothing_fits ? 'en' : undefined}>{told}</p>
      {data && data.items.length > 0 && (
        <ol class="ed-found" aria-label={e('insteadOf', { name })}>
          {data.items.map((found) => <Offer key={found.exercise} found={found} cautions={editor.library.get(found.exercise)?.cautions ?? []} was={name} onUse={() => onUse(found)} onAllow={mayAllow(one, found.exercise) ? () => onAllow(found) : null} />)}
        </ol>
      )}
      <p class="soft">{e('insteadJudge')}</p>
      <Button small kind="quiet" onClick={onClose}>{e('cancel')}</Button>
    </section>
  );
}

function Wishes({ editor, wish, onChange }: { editor: Editor; wish: Wish; onChange: (wish: Wish) => void }) {
  const entries = [...editor.library.values()];
  const { kit } = editor.client.value;
  const regions = regionsOf(entries).map((code) => ({ value: code, label: s(code as Region) }));
  const qualities = qualitiesOf(entries).map((code) => ({ value: code, label: coded('quality', code) }));
  return (
    <div class="ed-fields">
      <Select label={e('searchSpares')} value={wish.spare} options={[{ value: '', label: e('insteadSparesNone') }, ...regions]} onChange={(spare) => onChange({ ...wish, spare })} />
      <Select label={e('searchTrains')} value={wish.trains} options={[{ value: '', label: e('insteadTrainsSame') }, ...qualities]} onChange={(trains) => onChange({ ...wish, trains })} />
      <label class="ed-check">
        <Input type="checkbox" checked={wish.onlyHouse} onChange={(event) => onChange({ ...wish, onlyHouse: event.currentTarget.checked })} />
        <span>{e('onlyWithKit')}<small>{kit.length ? e('houseHas', { kit: kit.map((each) => coded('kit', each)).join(', ') }) : e('houseUnknown')}</small></span>
      </label>
    </div>
  );
}

interface OfferProps {
  found: Alternative;
  /** The usual ones of the exercise, seen before it is taken. */
  cautions: readonly string[];
  /** Name of what stands there now. */
  was: string;
  onUse: () => void;
  /** Null where it is allowed already, or no further one may be. */
  onAllow: (() => void) | null;
}

function Offer({ found, cautions, was, onUse, onAllow }: OfferProps) {
  return (
    <li>
      <div>
        <div lang="en">
          <b>{found.name}, {found.variant_name}</b>
          {found.reasons.map(({ because, sentence }) => <small key={because}>{sentence}</small>)}
        </div>
        {cautions.length > 0 && <small>{e('cautions')}: <span lang="en">{cautions.join(' ')}</span></small>}
      </div>
      <p class="ed-row">
        <Button small onClick={onUse} aria-label={e('insteadUseNamed', { name: `${found.name}, ${found.variant_name}`, was })}>{e('insteadUse')}</Button>
        {onAllow && <Button small kind="quiet" onClick={onAllow} aria-label={e('allowNamed', { name: `${found.name}, ${found.variant_name}`, was })}>{e('allow')}</Button>}
      </p>
    </li>
  );
}
