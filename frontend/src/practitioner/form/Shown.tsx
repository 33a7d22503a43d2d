import { fullDate, isLocalDate } from '../../shared/dates';

interface Props { label: string; value: string; unit?: string | undefined }

/** A value that may be read and not changed; nothing where there is none. */
export function Shown({ label, value, unit }: Props) {
  if (!value) return null;
  return <p class="shown"><span>{label}</span> <b>{value}{unit && ` ${unit}`}</b></p>;
}

/** A calendar day likewise, in words; what is half typed as it stands. */
export const ShownDay = ({ label, value }: Props) => <Shown label={label} value={isLocalDate(value) ? fullDate(value) : value} />;
