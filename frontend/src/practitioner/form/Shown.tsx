/** A value that may be read and not changed; nothing where there is none. */
export function Shown({ label, value, unit }: { label: string; value: string; unit?: string | undefined }) {
  if (!value) return null;
  return <p class="shown"><span>{label}</span> <b>{value}{unit && ` ${unit}`}</b></p>;
}
