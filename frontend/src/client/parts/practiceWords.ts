import { practice } from '../../outbox';
import { t } from '../words';
import en from '../words/en';

/** Every practice is given these to begin with, in English: they are said in the language of the phone. Its own words stay as they are. */
const said = (text: string | undefined, given: 'givenEmergency' | 'givenReply'): string => (text === en[given] ? t(given) : (text ?? ''));

export const emergencyText = (): string => said(practice.value?.emergency_text, 'givenEmergency');
export const replyTime = (): string => said(practice.value?.reply_time_text, 'givenReply');
