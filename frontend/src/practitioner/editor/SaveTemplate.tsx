import { useState } from 'preact/hooks';
import { Dialog } from '../../shared/Dialog';
import { failureFrom } from '../api/request';
import { Button } from '../form/Button';
import { Field } from '../form/Field';
import { Form } from '../form/Form';
import { saveTemplate } from './calls';
import type { Editor } from './editor';
import { failureWords } from './failure';
import { TITLE_LETTERS_MAX } from './limits';
import { toTemplate } from './toTemplate';
import { e } from './words';

/** Keeps the program on the page as a template of the practice. */
export function SaveTemplate({ editor, open, onClose }: { editor: Editor; open: boolean; onClose: () => void }) {
  return (
    <Dialog open={open} title={e('saveTemplate')} onClose={onClose}>
      <Body editor={editor} onClose={onClose} />
    </Dialog>
  );
}

function Body({ editor, onClose }: { editor: Editor; onClose: () => void }) {
  const [name, setName] = useState(editor.content.peek()?.title ?? '');
  const [about, setAbout] = useState('');
  const [error, setError] = useState<string | null>(null);
  const save = async () => {
    const content = editor.content.peek();
    if (!content) return;
    if (name.trim() === '') return setError(e('templateNameMissing'));
    if (content.days.length === 0) return setError(e('templateEmpty'));
    try {
      const saved = await saveTemplate(toTemplate(content, name.slice(0, TITLE_LETTERS_MAX), about));
      editor.say(e('templateSaved', { name: saved.name }));
      onClose();
    } catch (failure) {
      setError(failureWords(failureFrom(failure)));
    }
  };
  return (
    <Form class="ed-dialog" onSubmit={(event) => { event.preventDefault(); void save(); }}>
      <p>{e('saveTemplateText')}</p>
      <Field label={e('templateName')} value={name} onInput={setName} required />
      <Field label={e('templateAbout')} hint={e('templateAboutHint')} value={about} onInput={setAbout} />
      <p role="alert" class="error">{error}</p>
      <div class="foot">
        <Button kind="main" type="submit">{e('saveTemplate')}</Button>
        <Button onClick={onClose}>{e('cancel')}</Button>
      </div>
    </Form>
  );
}
