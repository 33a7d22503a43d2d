/** Die Tour in Kürze, und eine anderswo aufgezeichnete Wanderung. */
const walk = {
  tripDays: 'Deine Tour', tripDay: 'Tag {n}', tripDayNamed: 'Tag {n}: {name}',
  tripUpDown: '{up} auf, {down} ab', tripHeightsUnknown: 'Höhen nicht bekannt',
  walkFile: 'Anderswo aufgezeichnet? Aus einer GPX-Datei nehmen', walkFileHint: 'Sie wird auf diesem Handy gelesen und bleibt hier; gesichert werden nur die Zahlen unten.',
  walkFile_read: 'Gelesen. Bitte sieh es an, dann sichere es.',
  walkFile_too_large: 'Diese Datei ist größer als jede Wanderung (20 MB). Bitte gib die Zahlen von Hand ein.',
  walkFile_not_gpx: 'Das ist keine GPX-Datei, die sich lesen lässt. Bitte nimm eine andere, oder gib die Zahlen von Hand ein.',
  walkFile_nowhere: 'Ein Punkt in dieser Datei liegt nirgends auf der Erde. Bitte gib die Zahlen von Hand ein.',
  walkFile_no_way: 'In dieser Datei ist keine Wanderung: weniger als zwei Punkte, oder zu weit zu Fuß.',
  walkFile_not_loaded: 'Was GPX-Dateien liest, ist noch nicht auf diesem Handy. Bitte versuch es mit Netz noch einmal; an der Datei liegt es nicht.',
  walkFile_missed: 'Die geteilte Datei ist nicht angekommen. Bitte teile sie noch einmal, oder wähle sie hier.',
  shareMore: 'Eine geteilte Wanderung wartet und geht nicht verloren. Sichere erst, was unten steht, dann findest du sie unter „Heute“, oder', shareTake: 'nimm sie anstelle dieser Zahlen',
  shareWaits: 'Eine geteilte Wanderung wartet: ansehen und sichern',
  shareWaitsPair: 'Die geteilte Wanderung wartet auf diesem Handy. Sobald das Handy mit deiner Praxis verbunden ist, öffnet sie sich, zum Ansehen und Sichern.',
  shareMissedPair: 'Die geteilte Wanderung ist nicht angekommen. Sobald dieses Handy mit deiner Praxis verbunden ist, teile sie bitte noch einmal.',
} as const;
export default walk;
