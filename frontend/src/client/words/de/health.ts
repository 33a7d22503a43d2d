import type { Translation } from '../../../shared/words/mechanism';
import type en from '../en/health';

const health: Translation<typeof en> = {
  healthTitle: 'Ein paar Fragen zur Gesundheit',
  healthOffer: 'Sie helfen deiner Praxis zu sehen, ob vor dem Training eine Ärztin oder ein Arzt nachsehen sollte.',
  healthWhy: 'Eine Frage nach der anderen, ja oder nein. {practitioner} sieht deine Antworten. Du kannst aufhören und später weitermachen.',
  healthNot: 'Das ist keine Diagnose. Wenn du dich nicht wohlfühlst, frag eine Ärztin oder einen Arzt, egal was hier steht.',
  healthFetch: 'Die Fragen sind noch nicht auf diesem Handy. Sie kommen, sobald es Netz gibt.',
  healthBack: 'Frage davor',
  healthMissing: 'Bitte wähle eine Antwort.',
  yes: 'Ja',
  no: 'Nein',
  healthHard: 'Wie anstrengend werden dein Training und deine Tour?',
  healthHardHelp: 'Bergauf mit Rucksack ist für die meisten anstrengend. Wähle das, wenn du nicht sicher bist.',
  healthLight: 'Leicht bis mittel: Ich kann dabei sprechen',
  healthVigorous: 'Anstrengend: Ich bin außer Atem, oder ich trage einen Rucksack bergauf',
  healthFine: 'Du kannst anfangen',
  healthFineMore: 'Nichts in deinen Antworten spricht dafür, zuerst ärztlich nachsehen zu lassen. Fang sanft an und steigere dich Schritt für Schritt.',
  healthWait: 'Bitte warte auf {practitioner}, bevor du anfängst',
  healthRecommended: 'Vor anstrengendem Training sollte eine Ärztin oder ein Arzt nachsehen. {practitioner} sagt dir, wie es weitergeht.',
  healthRequired: 'Zuerst sollte eine Ärztin oder ein Arzt zustimmen. {practitioner} sagt dir, wie es weitergeht.',
  whySigns: 'Du hast Zeichen bemerkt, die ärztlich angesehen werden sollten.',
  whyDisease: 'Du hast eine Krankheit von Herz, Gefäßen, Nieren oder Zucker.',
  whyInactive: 'Du warst in den letzten Monaten nicht regelmäßig aktiv.',
  whyVigorous: 'Was du vorhast, ist anstrengend.',
  healthAgain: 'Noch einmal antworten',
  healthDone: 'Du hast sie beantwortet. Antworte noch einmal, wenn sich etwas ändert.',
  healthLook: 'Ergebnis ansehen',
};
export default health;
