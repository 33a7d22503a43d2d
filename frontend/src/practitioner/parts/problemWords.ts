import { t } from '../words';

const WORDS = {
  'wrong-code': 'problemWrongCode',
  'passkey-refused': 'problemPasskeyRefused',
  'passkey-not-valid': 'problemPasskeyRefused',
  'passkey-known': 'problemPasskeyKnown',
  'too-many-passkeys': 'problemManyPasskeys',
  'code-not-readable': 'problemCodeNotReadable',
  'wrong-password': 'problemWrongPassword',
  'wrong-sign-in': 'problemWrongPassword',
  'password-length': 'problemPasswordLength',
  'password-guessed': 'problemPasswordGuessed',
  'confirm-first': 'problemNotConfirmed',
  'nothing-begun': 'problemNothingBegun',
  'last-second-factor': 'problemLastFactor',
  'last-owner': 'problemLastOwner',
  'own-first': 'problemOwnFirst',
  'email-taken': 'problemEmailTaken',
  disabled: 'problemDisabled',
  'link-not-valid': 'problemLink',
  'read-only': 'problemReadOnly',
  'owner-only': 'problemOwnerOnly',
  'second-factor-required': 'problemRequired',
} as const;

/** What the server refused, in the words of the language shown; null where it has none of our own. */
export function problemWords(code: string): string | null {
  return code in WORDS ? t(WORDS[code as keyof typeof WORDS]) : null;
}
