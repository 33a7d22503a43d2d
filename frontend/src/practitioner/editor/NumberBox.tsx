import { useEffect, useState } from 'preact/hooks';
import { parseNumber } from '../../shared/numbers';
import { toShown, toSi, unitOf, type Quantity } from '../../shared/units';
import { Input } from '../form/bare';
import { useMay } from '../rights/Needs';
import type { Editor } from './editor';
import { within, type Range } from './limits';
import { e } from './words';

interface NumberBoxProps {
  editor: Editor;
  id: string;
  /** Heard before the visible words: which exercise this belongs to. */
  of?: string;
  before: string;
  after?: string;
  value: number | null;
  range: Range;
  /** Typed and shown in the chosen unit, kept in SI. */
  quantity?: Quantity;
  /** May be left empty. */
  optional?: boolean;
  onChange: (value: number | null) => void;
}

type Reading = { ok: true; value: number | null } | { ok: false };

function reading(text: string, { range, quantity, optional }: Pick<NumberBoxProps, 'range' | 'quantity' | 'optional'>): Reading {
  if (text.trim() === '') return optional ? { ok: true, value: null } : { ok: false };
  const typed = parseNumber(text);
  const si = typed !== null && quantity ? toSi(quantity, typed) : typed;
  const value = within(si !== null && range.whole && quantity ? Math.round(si) : si, range);
  return value === null ? { ok: false } : { ok: true, value };
}

function wanted(range: Range, quantity: Quantity | undefined): string {
  const [min, max] = quantity ? [toShown(quantity, range.min), toShown(quantity, range.max)] : [range.min, range.max];
  return range.whole ? e('numberWhole', { min, max }) : e('numberAny', { min, max });
}

/** A number inside a sentence. What does not fit stays as typed and says what is wanted; the content keeps the last number that fitted. */
export function NumberBox({ editor, id, of, before, after, value, onChange, ...rules }: NumberBoxProps) {
  const may = useMay();
  const { range, quantity } = rules;
  const [typed, setTyped] = useState<string | null>(null);
  const now = typed === null ? null : reading(typed, rules);
  const wants = now && !now.ok ? wanted(range, quantity) : null;
  useEffect(() => {
    editor.unreadableAt(id, wants === null ? null : `${of ? `${of}, ` : ''}${before}: ${wants}`);
  }, [wants, id]);
  useEffect(() => () => editor.unreadableAt(id, null), [id]);
  useEffect(() => {
    // Undo, or a one-click fix, changed it under the typing: show what holds.
    setTyped((text) => (text !== null && !same(reading(text, rules), value) ? null : text));
  }, [value]);
  const type = (text: string) => {
    setTyped(text);
    const read = reading(text, rules);
    if (read.ok && read.value !== value) onChange(read.value);
  };
  const shown = value === null ? '' : String(quantity ? toShown(quantity, value) : value);
  const unit = quantity ? unitOf(quantity) : after;
  if (!may) return shown && <span class="shown">{of && <span class="sr">{of}, </span>}{before} <b>{shown}</b> {unit}</span>;
  return (
    <span class="ed-num">
      <label>
        {of && <span class="sr">{of}, </span>}
        {before}{' '}
        <Input
          id={id}
          inputmode={range.whole && !quantity ? 'numeric' : 'decimal'}
          autocomplete="off"
          size={4}
          value={typed ?? shown}
          aria-invalid={wants ? true : undefined}
          aria-describedby={wants ? `${id}-wants` : undefined}
          onInput={(event) => type(event.currentTarget.value)}
          onBlur={() => now?.ok !== false && setTyped(null)}
        />{' '}
        {unit}
      </label>
      {wants && <span class="error" id={`${id}-wants`}>{wants}</span>}
    </span>
  );
}

const same = (read: Reading, value: number | null): boolean => read.ok && read.value === value;
