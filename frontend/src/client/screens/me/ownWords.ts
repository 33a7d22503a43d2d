/** Words of the parts that are fetched when they are shown. They come with them, in both languages. */
export const en = {
  dataTitle: 'My data at the practice',
  dataText: 'Everything that the practice holds about you, as a file: a page to read and the same for programs. It is about your health: keep it where only you can open it.',
  dataButton: 'Download my data',
  dataWorking: 'The practice puts it together …',
  dataDone: 'It is among your downloads.',
  dataAway: 'The practice was not reached. It needs a network; please try again later. What you wrote on this phone you can save now.',
  ownButton: 'Save what is on this phone',
  ownFailed: 'This could not be saved. Please try again.',
  erasedTitle: 'The practice has erased your record',
  erasedText: 'Nothing is sent from this phone any more. What you wrote is still on it, and is removed only if you say so. Save a copy first if you want to keep it. Questions about it go to your practice.',
  erasedRemove: 'Remove it from this phone',
  erasedCode: 'I have a new code',
  iosTitle: 'Put it on your home screen',
  iosFirst: 'Put it on your home screen first',
  iosText: 'On an iPhone or iPad: tap Share, then Add to Home Screen. Open Steadfoot from there and enter the code there. What you enter in the browser does not move along.',
  iosLink: 'On an iPhone or iPad: first copy the code below. Then tap Share and Add to Home Screen. Open Steadfoot from there and tap Paste. What you enter in the browser does not move along.',
  iosCopy: 'Copy the code',
  iosCopied: 'Copied. Open Steadfoot from your home screen and tap Paste there.',
} as const;

export const de: Record<keyof typeof en, string> = {
  dataTitle: 'Meine Daten bei der Praxis',
  dataText: 'Alles, was die Praxis über Sie gespeichert hat, als Datei: eine Seite zum Lesen und dasselbe für Programme. Es geht um Ihre Gesundheit: Bewahren Sie es so auf, dass nur Sie es öffnen können.',
  dataButton: 'Meine Daten herunterladen',
  dataWorking: 'Die Praxis stellt sie zusammen …',
  dataDone: 'Sie liegen bei Ihren Downloads.',
  dataAway: 'Die Praxis wurde nicht erreicht. Dafür ist ein Netz nötig; bitte später noch einmal versuchen. Was Sie auf diesem Telefon geschrieben haben, können Sie jetzt sichern.',
  ownButton: 'Sichern, was auf diesem Telefon ist',
  ownFailed: 'Das konnte nicht gesichert werden. Bitte noch einmal versuchen.',
  erasedTitle: 'Die Praxis hat Ihre Akte gelöscht',
  erasedText: 'Von diesem Telefon wird nichts mehr gesandt. Was Sie geschrieben haben, ist noch darauf und wird nur entfernt, wenn Sie es sagen. Sichern Sie vorher eine Kopie, wenn Sie sie behalten wollen. Fragen dazu beantwortet Ihre Praxis.',
  erasedRemove: 'Von diesem Telefon entfernen',
  erasedCode: 'Ich habe einen neuen Code',
  iosTitle: 'Leg es auf den Startbildschirm',
  iosFirst: 'Leg es zuerst auf den Startbildschirm',
  iosText: 'Auf iPhone oder iPad: Tippe auf Teilen, dann auf Zum Home-Bildschirm. Öffne Steadfoot von dort und gib den Code dort ein. Was du im Browser einträgst, zieht nicht mit um.',
  iosLink: 'Auf iPhone oder iPad: Kopiere zuerst den Code hier unten. Tippe dann auf Teilen und auf Zum Home-Bildschirm. Öffne Steadfoot von dort und tippe auf Einfügen. Was du im Browser einträgst, zieht nicht mit um.',
  iosCopy: 'Code kopieren',
  iosCopied: 'Kopiert. Öffne Steadfoot vom Startbildschirm und tippe dort auf Einfügen.',
};

/** The words in a language; the part is handed which. */
export const wordsOf = (language: 'en' | 'de') => (language === 'de' ? de : en);
