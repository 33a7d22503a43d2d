/**
 * The health questions come from the practice in English; here they are in German, by code. A code always means the same question
 * (decision 0004). One that is not here is asked as it came.
 */
export const QUESTIONS_DE: Readonly<Record<string, readonly [question: string, help: string]>> = {
  active: [
    'Hast du dich in den letzten 3 Monaten in den meisten Wochen an 3 oder mehr Tagen bewegt?',
    'Es zählen geplantes zügiges Gehen, Radfahren oder Sport, mindestens 30 Minuten am Stück. So anstrengend, dass du schneller atmest, aber noch sprechen kannst.',
  ],
  'heart-or-vessels': [
    'Hat man dir ärztlich eine Krankheit von Herz oder Blutgefäßen genannt?',
    'Zum Beispiel Herzinfarkt, Stent oder Bypass, Herzschwäche, ein Herzklappenfehler, unregelmäßiger Herzschlag, Schlaganfall oder enge Arterien in den Beinen.',
  ],
  diabetes: ['Hast du Diabetes?', 'Gleich welcher Typ. Sag auch ja, wenn Tabletten, Spritzen oder Ernährung ihn gut im Griff haben.'],
  kidneys: ['Hat man dir ärztlich eine Nierenkrankheit genannt?', 'Ein Nierenstein oder eine Blasenentzündung, die vorbei ist, zählt nicht.'],
  chest: [
    'Hast du manchmal Schmerz, Druck oder Enge in Brust, Hals, Kiefer oder Armen?',
    'In Ruhe, bei Anstrengung oder nach dem Essen. Wenn du es jetzt hast, ruf den örtlichen Notruf an.',
  ],
  breath: [
    'Bekommst du in Ruhe, bei leichter Anstrengung oder nachts im Liegen schlecht Luft?',
    'Schwer zu atmen an einem steilen Hang ist normal. Außer Atem beim Anziehen oder langsamen Gehen ist es nicht.',
  ],
  faint: ['Wird dir schwindlig, oder bist du ohnmächtig oder beinahe ohnmächtig geworden?', 'Sag vor allem ja, wenn es bei oder gleich nach Anstrengung kam.'],
  heartbeat: [
    'Rast, flattert oder stolpert dein Herz ohne erkennbaren Grund, oder wurde ein Herzgeräusch gefunden?',
    'Schneller Herzschlag beim Treppensteigen ist normal.',
  ],
  ankles: ['Schwellen deine beiden Knöchel an?', 'Wenn nur ein Bein geschwollen, warm und schmerzhaft ist, lass es heute noch ansehen.'],
  legs: [
    'Krampfen oder schmerzen deine Waden beim Gehen, und hört es auf, wenn du stehen bleibst?',
    'Muskelkater am Tag nach dem Training zählt nicht.',
  ],
  tired: ['Machen dich alltägliche Dinge viel müder oder atemloser als früher?', 'Zum Beispiel Bettenmachen oder Einkäufe tragen.'],
};
