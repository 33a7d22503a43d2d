import { useState } from 'preact/hooks';
import { Dialog } from '../../shared/Dialog';
import { failureFrom } from '../api/request';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { changeTemplate, deleteTemplate, saveTemplate } from '../editor/calls';
import { failureWords } from '../editor/failure';
import { focusSoon } from '../editor/focus';
import type { Template } from '../editor/types';
import { e } from '../editor/words';
import { say } from '../parts/status';

interface Props {
  template: Template;
  /** The list is to be asked for again. */
  onChange: () => Promise<void>;
}

/** Does it and has the list read again; what fails is said. */
async function does(write: () => Promise<unknown>, onChange: Props['onChange'], told: string, undo?: () => void): Promise<void> {
  try {
    await write();
    say(told, undo);
  } catch (error) {
    say(failureWords(failureFrom(error)));
  }
  await onChange();
}

function remove({ template, onChange }: Props): void {
  const { name, about, sessions, weeks } = template;
  const bringBack = () => void does(() => saveTemplate({ name, about, sessions, weeks }), onChange, e('templateBack', { name }));
  void does(() => deleteTemplate(template.id), onChange, e('templateDeleted', { name }), bringBack).then(() => focusSoon('own'));
}

function Rename({ template, onChange, onClose }: Props & { onClose: () => void }) {
  const [name, setName] = useState(template.name);
  const [about, setAbout] = useState(template.about);
  const [error, setError] = useState<string | null>(null);
  const save = async () => {
    if (name.trim() === '') return setError(e('templateNameMissing'));
    try {
      const { data } = await changeTemplate(template.id, { name, about });
      say(e('templateChanged', { name: data.name }));
      await onChange();
      onClose();
    } catch (failure) {
      setError(failureWords(failureFrom(failure)));
    }
  };
  return (
    <Form class="ed-dialog" onSubmit={(event) => { event.preventDefault(); void save(); }} noValidate>
      <Field label={e('templateName')} value={name} onInput={setName} required />
      <Field label={e('templateAbout')} hint={e('templateAboutHint')} value={about} onInput={setAbout} />
      <p role="alert" class="error">{error}</p>
      <div class="foot">
        <Button kind="main" type="submit">{e('templateSave')}</Button>
        <Button onClick={onClose}>{e('cancel')}</Button>
      </div>
    </Form>
  );
}

/** What can be done with a template of the practice: another name, or away with it. */
export function OwnTemplate(props: Props) {
  const [renaming, setRenaming] = useState(false);
  const { name } = props.template;
  return (
    <div class="ed-row">
      <Button small kind="quiet" aria-label={`${e('templateRename')}: ${name}`} onClick={() => setRenaming(true)}>{e('templateRename')}</Button>
      <Button small kind="quiet" aria-label={`${e('templateDelete')}: ${name}`} onClick={() => remove(props)}>{e('templateDelete')}</Button>
      <Dialog open={renaming} title={e('templateRename')} onClose={() => setRenaming(false)}>
        <Rename {...props} onClose={() => setRenaming(false)} />
      </Dialog>
    </div>
  );
}
